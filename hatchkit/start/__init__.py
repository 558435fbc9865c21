"""How a person begins: a new season folder, a file to double-click, the notebooks in JupyterLab."""

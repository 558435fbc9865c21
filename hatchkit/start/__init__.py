"""How a person begins: a new season folder, a file to double-click, the notebooks in JupyterLab.

`tests/browser` copies the demo season to a fresh folder, starts `python -m hatchkit open FOLDER --no-browser` on a
free port with Jupyter's own folders set apart, and drives headless Chromium with selenium: the notebook opens, no
pop-up or dialog is in the way, *Run All Cells* runs every cell, no cell fails, every picture is drawn and has alt
text, and the browser asked no address but the local server. A screenshot is left in `tests/browser/screenshots/`
(not under version control). A second test runs a notebook with an error cell and sees that the error is noticed.
Without Chromium, chromedriver or selenium the file is not collected and a line of the summary says so.

What JupyterLab 4.6.6 needs to stay quiet (`start/surface.lab_command`; each was tried in the browser):

- `--LabApp.app_settings_dir=hatchkit/start/lab_settings` (overrides.json: `fetchNews: "false"`, `checkForUpdates:
  false`): "Would you like to get notified about official Jupyter news?" pops up, even with the next two
- `--LabApp.news_url=None` (the word None; an empty text still counts as an address): the server would fetch the
  news feed when asked
- `--LabApp.check_for_updates_class=jupyterlab.NeverCheckForUpdate`: the server would ask the package index for a
  newer JupyterLab
- `--LabApp.extension_manager=readonly`: the extension panel would search the package index
- kernelspec in the copied notebooks (`copy_notebooks`): a "Select Kernel" dialog

The same option given twice makes JupyterLab drop others in silence.
"""

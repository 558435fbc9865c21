"""What keeps JupyterLab quiet: its questions are answered before it asks, and it is told to call nobody."""

import json
from pathlib import Path

from hatchkit.start import surface

SETTINGS = Path(surface.__file__).parent / "lab_settings"


def test_the_question_about_news_is_answered_and_no_update_is_looked_for():
    overrides = json.loads((SETTINGS / "overrides.json").read_text(encoding="utf-8"))
    notices = overrides["@jupyterlab/apputils-extension:notification"]
    assert notices == {"fetchNews": "false", "checkForUpdates": False}


def test_the_server_is_started_with_these_settings_and_no_address_for_news(tmp_path):
    command = surface.lab_command(tmp_path, port=8899, browser=False)
    assert f"--LabApp.app_settings_dir={SETTINGS}" in command
    assert {"--LabApp.news_url=None", "--LabApp.extension_manager=readonly"} <= set(command)
    names = [option.split("=")[0] for option in command if option.startswith("--LabApp")]
    assert len(names) == len(set(names))

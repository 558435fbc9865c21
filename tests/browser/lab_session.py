"""JupyterLab as a person starts it, and a browser that looks at it."""

import json
import os
import socket
import subprocess
import sys
import time
import urllib.request
from pathlib import Path

from selenium import webdriver
from selenium.webdriver.chrome.service import Service
from selenium.webdriver.common.by import By

ROOT = Path(__file__).resolve().parents[2]
QUIET = [
    "--headless=new",
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--window-size=1400,1000",
]


class Lab:
    """``hatchkit open FOLDER --no-browser``, with Jupyter's own folders kept apart from the person's."""

    def __init__(self, folder, scratch):
        with socket.socket() as free:
            free.bind(("127.0.0.1", 0))
            self.port = free.getsockname()[1]
        self.log = Path(scratch) / "lab.log"
        runtime = Path(scratch) / "runtime"
        own = {
            name: str(Path(scratch) / name.lower())
            for name in (
                "JUPYTER_CONFIG_DIR",
                "JUPYTER_DATA_DIR",
                "JUPYTERLAB_SETTINGS_DIR",
                "JUPYTERLAB_WORKSPACES_DIR",
                "IPYTHONDIR",
            )
        }
        with self.log.open("w") as log:
            self.process = subprocess.Popen(
                [sys.executable, "-m", "hatchkit", "open", str(folder), "--no-browser", "--port", str(self.port)],
                stdout=log,
                stderr=log,
                cwd=ROOT,
                env={**os.environ, **own, "JUPYTER_RUNTIME_DIR": str(runtime)},
            )
        info = wait_for(lambda: next(iter(runtime.glob("jpserver-*.json")), None), 60, self.log.read_text)
        facts = wait_for(lambda: json.loads(info.read_text(encoding="utf-8") or "null"), 5)
        self.token, self.server = facts["token"], facts["pid"]

    def address(self, page):
        return f"http://127.0.0.1:{self.port}/lab/tree/{page}?token={self.token}&reset"

    def ask(self, path, method="GET"):
        asked = urllib.request.Request(
            f"http://127.0.0.1:{self.port}/api/{path}", method=method, headers={"Authorization": f"token {self.token}"}
        )
        with urllib.request.urlopen(asked, timeout=60) as answer:
            return json.loads(answer.read() or "null")

    def close(self):
        for kernel in self.ask("kernels"):
            self.ask(f"kernels/{kernel['id']}", "DELETE")
        self.ask("shutdown", "POST")
        self.process.wait(timeout=20)


def browser(*, binary, driver, scratch):
    """A headless Chromium that writes down every address it asks for."""
    os.environ["SE_OFFLINE"] = "true"
    options = webdriver.ChromeOptions()
    options.binary_location = binary
    for flag in [*QUIET, f"--user-data-dir={scratch}/profile"]:
        options.add_argument(flag)
    options.set_capability("goog:loggingPrefs", {"performance": "ALL"})
    return webdriver.Chrome(options=options, service=Service(driver))


def addresses_asked(page):
    """Addresses that the browser has asked for since the last call."""
    events = (json.loads(entry["message"])["message"] for entry in page.get_log("performance"))
    return {event["params"]["request"]["url"] for event in events if event["method"] == "Network.requestWillBeSent"}


def wait_for(look, seconds, otherwise=lambda: ""):
    """Call `look` until it gives something; AssertionError with the text of `otherwise` after `seconds`."""
    end = time.monotonic() + seconds
    while time.monotonic() < end:
        seen = look()
        if seen:
            return seen
        time.sleep(0.2)
    raise AssertionError(f"waited {seconds} s in vain. {otherwise()}")


def menu(page, *labels):
    """Choose an entry of the menu bar."""
    for kind, label in zip(("MenuBar", "Menu"), labels, strict=True):
        spot = f"//div[contains(@class, 'lm-{kind}-itemLabel') and text()='{label}']"
        wait_for(lambda spot=spot: page.find_elements(By.XPATH, spot), 20)[0].click()


def kernels_idle(lab):
    """Whether every kernel has done its work."""
    states = [kernel["execution_state"] for kernel in lab.ask("kernels")]
    return states and set(states) == {"idle"}


def pop_ups(page):
    """The texts of dialogs and notices on the page."""
    return [box.text for box in page.find_elements(By.CSS_SELECTOR, ".Toastify__toast, .jp-Dialog")]

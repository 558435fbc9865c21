"""Files that could take a machine down: how long and how much memory until hatchkit refuses or reads them.

Run: python tests/benchmarks/dangerous_files.py
"""

import subprocess
import sys
import tempfile
import zipfile
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[1] / "records"))

from sheet_files import ROW, TIDY, write_ods, write_xlsx

READ = """
import resource, sys, time
from hatchkit.problems import HatchkitError
from hatchkit.records.folder import read_folder
start, before = time.process_time(), resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
try:
    read = read_folder(sys.argv[1])
    said = f"read, batches: {len(read['batches'])}"
except HatchkitError as error:
    said = "refused: " + str(error)
grown = (resource.getrusage(resource.RUSAGE_SELF).ru_maxrss - before) / 1024
print(f"{time.process_time() - start:.2f} s, {grown:.0f} MB more; {said}")
"""


def rewritten(path: Path, change) -> None:
    """A workbook with its first sheet changed by `change`, a function of its bytes."""
    with zipfile.ZipFile(path) as parts:
        content = {name: parts.read(name) for name in parts.namelist()}
    name = "xl/worksheets/sheet1.xml"
    content[name] = change(content[name])
    with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as parts:
        for part, data in content.items():
            parts.writestr(part, data)


def far_cell(folder: Path) -> None:
    """One cell in the last row and column that a workbook can have."""
    write_xlsx(folder, [TIDY, ROW])
    cell = b'<row r="1048576"><c r="XFD1048576"><v>1</v></c></row></sheetData>'
    rewritten(folder / "batches.xlsx", lambda xml: xml.replace(b"</sheetData>", cell))


def zip_bomb(folder: Path) -> None:
    """About a megabyte that unpacks to 250 MB of cells."""
    write_xlsx(folder, [TIDY, ROW])
    row = b"<row>" + b"<c><v>1</v></c>" * 1000 + b"</row>"
    rewritten(folder / "batches.xlsx", lambda xml: xml.replace(b"</sheetData>", row * 16_500 + b"</sheetData>"))


def dense_sheet(folder: Path) -> None:
    """Under the limit of size, over the limit of cells: few cells that span a huge sheet."""
    write_xlsx(folder, [TIDY, ROW])
    cell = b'<row r="99999"><c r="GR99999"><v>1</v></c></row></sheetData>'
    rewritten(folder / "batches.xlsx", lambda xml: xml.replace(b"</sheetData>", cell))


def evil_repeat(folder: Path) -> None:
    """Cells that an .ods file repeats a million times."""
    write_ods(folder / "batches.ods", [TIDY] + [ROW] * 50, repeat=' table:number-columns-repeated="1000000"')


def garbage(folder: Path) -> None:
    """300 MB of bytes that are no text."""
    block = bytes(range(256)) * 4096
    with open(folder / "batches.csv", "wb") as handle:
        for _ in range(300):
            handle.write(block)


def main() -> None:
    """Make each file, read its folder in a process of its own, print what it took."""
    for make in (far_cell, zip_bomb, dense_sheet, evil_repeat, garbage):
        with tempfile.TemporaryDirectory() as folder:
            make(Path(folder))
            run = subprocess.run([sys.executable, "-c", READ, folder], capture_output=True, text=True)
            size = sum(path.stat().st_size for path in Path(folder).iterdir()) / 1e6
            print(f"{make.__name__} ({size:.2f} MB): {run.stdout.strip() or run.stderr.strip()[-200:]}")


if __name__ == "__main__":
    main()

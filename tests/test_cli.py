"""The launcher: plain sentences, exit status 0 or 2, nothing written where it should not be."""

import os
import re
import subprocess
import sys
from pathlib import Path

import openpyxl
import pytest

from hatchkit.cli import main
from hatchkit.findings.finding import Findings
from hatchkit.pages.page import file_name

ROOT = Path(__file__).resolve().parent.parent
HEADINGS = ["Batch", "Species", "Incubator", "Set on", "Eggs set", "Candled 1", "Clear 1", "Dead 1", "Hatched"]
GOOD = ["B1", "hen", "A", "2026-03-01", 24, "2026-03-08", 2, 1, 18]


@pytest.fixture
def season_folder(tmp_path):
    def write(*rows, headings=HEADINGS, sheet="batches"):
        book = openpyxl.Workbook()
        book.active.title = sheet
        for row in [headings, *rows]:
            book.active.append(row)
        book.save(tmp_path / "batches.xlsx")
        return tmp_path

    return write


def run(capsys, *arguments):
    status = main([str(argument) for argument in arguments])
    said = capsys.readouterr()
    return status, said.out, said.err


def test_a_good_folder_is_checked_with_status_0(season_folder, capsys):
    status, out, err = run(capsys, "check", season_folder(GOOD))
    assert (status, err) == (0, "")
    assert "read 1 batch, 0 egg rows, 0 weighings, 0 readings." in out


def test_the_list_of_problems_can_be_written_as_csv_and_html(season_folder, capsys, tmp_path):
    rows = [GOOD, ["=1+1<b>", "dodo", "A", "2026-03-01", 24, None, None, None, 20]]
    status, _, _ = run(
        capsys, "check", season_folder(*rows), "--csv", tmp_path / "problems.csv", "--html", tmp_path / "p.html"
    )
    assert status == 0
    csv_text, html_text = ((tmp_path / name).read_text(encoding="utf-8") for name in ("problems.csv", "p.html"))
    assert "dodo" in csv_text and "dodo" in html_text
    assert not any(cell.startswith(("=", "+", "@")) for line in csv_text.splitlines() for cell in line.split(","))
    assert "<b>" not in html_text.replace("<b>Lost</b>", "")


@pytest.mark.parametrize(
    ("rows", "words"),
    [
        ([[*GOOD[:4], 24, "2026-03-08", 2, 1, 30]], ["30", "24"]),
        ([["B1", "hen", "A", "2026-03-10", 24, "2026-03-01", 2, 1, 18]], ["B1", "candl"]),
        ([["B1", "hen", None, "2026-03-01", 24, "2026-03-08", 2, 1, 18]], ["B1", "incubator"]),
        ([["B1", "dodo", "A", "2026-03-01", 24, "2026-03-08", 2, 1, 18], ["B2", *GOOD[1:]]], ["dodo", "B2"]),
    ],
)
def test_bad_rows_are_named_and_the_rest_is_read(season_folder, capsys, rows, words):
    status, out, _ = run(capsys, "check", season_folder(*rows))
    assert status == 0
    assert "Traceback" not in out
    for word in words:
        assert word in out


def test_an_empty_folder_is_one_sentence_and_status_2(tmp_path, capsys):
    status, out, err = run(capsys, "check", tmp_path)
    assert status == 2 and out == ""
    assert err.startswith("hatchkit: ") and len(err.strip().splitlines()) == 1


def test_a_missing_folder_is_one_sentence_and_status_2(tmp_path, capsys):
    status, _, err = run(capsys, "review", tmp_path / "nowhere")
    assert status == 2
    assert "nowhere" in err and "Traceback" not in err


def test_a_workbook_with_no_known_sheet_says_which_sheets_there_are(season_folder, capsys):
    folder = season_folder(["milk", 2], headings=["item", "price"], sheet="Shopping")
    status, out, err = run(capsys, "check", folder)
    assert "Shopping" in out + err and "Traceback" not in out + err


def test_a_broken_workbook_is_named(tmp_path, capsys):
    (tmp_path / "batches.xlsx").write_bytes(b"this is no workbook")
    status, out, err = run(capsys, "check", tmp_path)
    assert "batches.xlsx" in out + err and "Traceback" not in out + err


def test_a_folder_with_only_sensor_files_loads_and_says_what_is_missing(tmp_path, capsys):
    (tmp_path / "sensors").mkdir()
    lines = ["time,temp C"] + [
        f"2026-03-01T{hour:02d}:{minute:02d}:00,37.{minute % 7}" for hour in range(24) for minute in range(0, 60, 5)
    ]
    (tmp_path / "sensors" / "a.csv").write_text("\n".join(lines), encoding="utf-8")
    status, out, err = run(capsys, "check", tmp_path)
    assert status == 0 and "batch" in out


def test_an_unknown_batch_is_refused_with_the_batches_there_are(season_folder, capsys):
    status, _, err = run(capsys, "poor-hatch", season_folder(GOOD), "B9")
    assert status == 2
    assert "'B9'" in err and "B1" in err


def test_start_writes_once_and_never_overwrites(tmp_path, capsys):
    folder = tmp_path / "mine"
    assert run(capsys, "start", folder)[0] == 0
    names = {path.relative_to(folder).as_posix() for path in folder.rglob("*") if path.is_file()}
    assert {"batches.xlsx", "season.toml", "notebooks/1_season_review.ipynb"} <= names
    (folder / "season.toml").write_text("title = 'mine'\n", encoding="utf-8")
    before = {path: path.read_bytes() for path in folder.rglob("*") if path.is_file()}
    status, out, _ = run(capsys, "start", folder)
    assert status == 0 and "nothing was changed" in out
    assert {path: path.read_bytes() for path in folder.rglob("*") if path.is_file()} == before


def test_a_started_folder_can_be_checked(tmp_path, capsys):
    run(capsys, "start", tmp_path / "mine")
    status, out, err = run(capsys, "check", tmp_path / "mine")
    assert "Traceback" not in out + err and "batch" in out + err


def test_input_files_are_never_written_to(season_folder, capsys):
    folder = season_folder(GOOD)
    os.chmod(folder / "batches.xlsx", 0o444)
    before = {path.name: (path.read_bytes(), path.stat().st_mtime_ns) for path in folder.iterdir()}
    run(capsys, "check", folder)
    assert {path.name: (path.read_bytes(), path.stat().st_mtime_ns) for path in folder.iterdir()} == before


@pytest.mark.parametrize(
    "command",
    [
        ["check", ".", "--csv", "batches.csv"],
        ["check", ".", "--csv", "sensors/A.csv"],
        ["check", ".", "--html", "season.toml"],
        ["review", ".", "-o", "batches.csv"],
        ["review", ".", "-o", "season.toml"],
        ["review", ".", "-o", "sensors/A.csv"],
        ["review", ".", "-o", "sensors/A.html"],
        ["poor-hatch", ".", "B1", "-o", "batches.csv"],
        ["poor-hatch", ".", "-o", "./sensors/../batches.csv"],
    ],
)
def test_no_output_option_reaches_what_a_season_reads(tmp_path, capsys, monkeypatch, command):
    monkeypatch.chdir(tmp_path)
    table = "batch,species,incubator,set_at,eggs_set,hatched\nB1,hen,A,2026-03-01,24,18\n"
    (tmp_path / "sensors").mkdir()
    for name, text in (("batches.csv", table), ("season.toml", 'title = "Mine"\n'), ("sensors/A.csv", "time,temp\n")):
        (tmp_path / name).write_text(text, encoding="utf-8")
    before = {path: path.read_bytes() for path in tmp_path.rglob("*") if path.is_file()}
    status, _, err = run(capsys, *command)
    assert {path: path.read_bytes() for path in tmp_path.rglob("*") if path.is_file()} == before
    assert status == 2 and err.splitlines()[-1].startswith("hatchkit: ")


#: Names of batches that no system could take as they are, and how the names of their pages end.
NAMED = {
    'a/b:c?d*e<f>g|h"i\\j': "-batch-a_b_c_d_e_f_g_h_i_j.html",
    "Żółć no. 3": "-batch-Żółć_no._3.html",
    "long " * 60: "_long_lo.html",
}


@pytest.mark.parametrize("batch", NAMED)
def test_a_page_is_named_after_season_and_batch_in_a_way_that_every_system_takes(batch):
    name = file_name(Findings("batch", dict(name="Spring", batch=batch), (), None))
    assert name.startswith("Spring") and name.endswith(NAMED[batch]) and len(name) < 90


def test_a_page_without_a_name_of_its_own_lies_in_the_working_folder(season_folder, capsys, monkeypatch, tmp_path):
    monkeypatch.chdir(tmp_path)
    batch = 'a/b:c?d*e<f>g|h"i\\j' + " long" * 60
    status, out, _ = run(capsys, "poor-hatch", season_folder([batch, *GOOD[1:]]), batch)
    [page] = tmp_path.glob("*-batch-a_b_c_d_e_f_g_h_i_j_long_long*.html")
    assert status == 0 and out.splitlines()[0].endswith(page.name) and len(page.name) < 90
    title = page.read_text(encoding="utf-8").split("<title>")[1]
    assert "batch" in title.split("</title>")[0]


def test_a_review_and_its_options(season_folder, capsys, monkeypatch, tmp_path):
    monkeypatch.chdir(tmp_path)
    status, out, err = run(capsys, "review", season_folder(GOOD), "-o", "mine.html", "--unit", "F", "--full")
    assert status == 0 and out.startswith("The page is in ") and "Reading" in err
    html = (tmp_path / "mine.html").read_text(encoding="utf-8")
    assert "<details open>" in html and "99.5" in html and "°C" not in html
    assert run(capsys, "review", season_folder(GOOD), "--unit", "K")[0] == 2


def test_a_terminal_without_a_letter_of_a_name_gets_a_question_mark(season_folder):
    folder = season_folder(["Żółć", "dodo", *GOOD[2:]], GOOD)
    said = subprocess.run(
        [sys.executable, "-m", "hatchkit", "check", folder],
        capture_output=True,
        cwd=ROOT,
        env={**os.environ, "PYTHONIOENCODING": "cp1252"},
    )
    assert (said.returncode, said.stderr) == (0, b"")
    assert "dodo" in said.stdout.decode("cp1252")


@pytest.mark.parametrize(
    ("option", "given"), [("--seed", "-7"), ("--seed", "x"), ("--students", "0"), ("--students", "2.5")]
)
def test_a_number_of_no_use_is_refused_in_a_sentence(tmp_path, capsys, option, given):
    others = {"--seed": "7", "--students": "2", option: given}
    with pytest.raises(SystemExit) as stopped:
        main(["lesson", str(tmp_path / "class"), *(word for pair in others.items() for word in pair)])
    assert stopped.value.code == 2
    assert f"argument {option}: '{given}' is not a whole number from" in capsys.readouterr().err
    assert not (tmp_path / "class").exists()


def test_the_next_set_is_planned_and_saved_as_calendar_and_sheet(season_folder, capsys, tmp_path):
    status, out, _ = run(
        capsys,
        "next-set",
        season_folder(GOOD),
        "--species",
        "hen",
        "--chicks",
        10,
        "--set-at",
        "2026-04-03T18:00",
        "--save",
        tmp_path / "plan",
    )
    assert status == 0
    assert "hen eggs" in out and "3 April 2026" in out
    assert (tmp_path / "plan" / "next_set.ics").read_bytes().startswith(b"BEGIN:VCALENDAR\r\n")
    assert "2026" in (tmp_path / "plan" / "next_set.html").read_text(encoding="utf-8")


@pytest.mark.parametrize("when", ["gestern", "2027-02-30", "5", "nat", "1066-01-01", "04/05/2027"])
def test_a_time_of_setting_that_is_none_is_one_sentence(season_folder, capsys, when):
    status, out, err = run(
        capsys, "next-set", season_folder(GOOD), "--species", "hen", "--chicks", 10, "--set-at", when
    )
    assert status == 2 and out == ""
    assert err.startswith("hatchkit: ") and len(err.strip().splitlines()) == 1


def test_a_class_gets_its_cases_and_blank_sheets_are_marked(capsys, tmp_path):
    status, out, _ = run(capsys, "lesson", tmp_path / "class", "--students", 2, "--seed", 7)
    assert status == 0 and "2 cases" in out
    sheets = tmp_path / "class" / "students"
    status, out, _ = run(capsys, "mark", sheets, tmp_path / "class", "--csv", tmp_path / "marks.csv")
    assert status == 0
    assert len((tmp_path / "marks.csv").read_text(encoding="utf-8").splitlines()) >= 3
    for name in ("back", "back_2"):
        status, out, _ = run(capsys, "mark", sheets, tmp_path / "class", "--give-back", tmp_path / "back")
        assert status == 0 and (tmp_path / name / "class.html").exists()


def test_what_is_not_understood_is_said(capsys):
    with pytest.raises(SystemExit) as stopped:
        main(["check", "demo", "--colour"])
    assert stopped.value.code == 2
    assert "not understood: --colour" in capsys.readouterr().err


def test_options_of_the_test_command_go_to_pytest(monkeypatch):
    called = []
    monkeypatch.setattr("hatchkit.cli.run_and_wait", lambda command, **_: called.append(command) or 0)
    assert main(["test", "tests/test_units.py", "-q", "--durations=3"]) == 0
    assert called[0][-3:] == ["tests/test_units.py", "-q", "--durations=3"]


@pytest.mark.skipif(os.name == "nt", reason="a pipe closes the POSIX way")
def test_a_reader_who_has_seen_enough_is_no_error():
    head = subprocess.Popen(
        [sys.executable, "-m", "hatchkit", "check", "demo"], stdout=subprocess.PIPE, stderr=subprocess.PIPE, cwd=ROOT
    )
    head.stdout.close()
    assert head.stderr.read() == b"" and head.wait(timeout=60) == 0


def test_a_command_is_needed(capsys):
    assert run(capsys)[0] == 2


@pytest.mark.parametrize(
    "error",
    [
        KeyError("x"),
        ZeroDivisionError("division by zero"),
        RecursionError("too deep"),
        TimeoutError("a step took too long"),
        MemoryError(),
    ],
)
def test_what_nobody_foresaw_is_one_sentence_with_its_file_and_its_details(season_folder, capsys, monkeypatch, error):
    import hatchkit.season

    def break_at(path):
        raise error

    monkeypatch.delenv("HATCHKIT_STRICT", raising=False)
    monkeypatch.setattr(hatchkit.season, "load_season", lambda folder: break_at(path="sensors/odd.csv"))
    status, out, err = run(capsys, "check", season_folder(GOOD))
    assert (status, out) == (2, "") and err.count("\n") == 1
    assert "sensors/odd.csv" in err and "Traceback" not in err and "None" not in err
    details = Path(re.search(r"are in (\S+[.]txt)", err)[1])
    assert type(error).__name__ in details.read_text(encoding="utf-8")
    details.unlink()


def test_while_the_kit_is_tested_an_unforeseen_error_is_shown(season_folder, monkeypatch):
    import hatchkit.season

    monkeypatch.setenv("HATCHKIT_STRICT", "1")
    monkeypatch.setattr(hatchkit.season, "load_season", lambda folder: {}["x"])
    with pytest.raises(KeyError):
        main(["check", str(season_folder(GOOD))])


def test_every_page_that_is_written_is_sealed(season_folder, capsys, tmp_path):
    run(capsys, "start", tmp_path / "new")
    run(capsys, "check", "demo", "--html", tmp_path / "check.html")
    run(capsys, "next-set", "demo", "--species", "chicken", "--chicks", "20", "--save", tmp_path / "plan")
    pages = sorted(tmp_path.rglob("*.html"))
    assert {page.name for page in pages} == {"candling-sheet.html", "check.html", "next_set.html"}
    for page in pages:
        text = page.read_text(encoding="utf-8")
        assert "default-src 'none'" in text and "<script" not in text

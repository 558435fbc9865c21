"""A thin launcher: each command is a few calls of the kit. Exit status 0, or 2 with one plain sentence."""

from __future__ import annotations

import argparse
import gc
import os
import sys
import warnings
from pathlib import Path

from hatchkit import __version__, say
from hatchkit.bootstrap import checkout, run_and_wait
from hatchkit.problems import HatchkitError
from hatchkit.terminal import asked_language, speak_everywhere, tell, unforeseen


def main(arguments=None) -> int:
    """Run one command; returns the exit status."""
    speak_everywhere()
    parser = _parser()
    options, rest = parser.parse_known_args(arguments)
    options.rest = rest
    if options.rest and getattr(options, "run", None) is not _test:
        parser.error(f"not understood: {' '.join(options.rest)}")
    if not hasattr(options, "run"):
        parser.print_help()
        return 2
    gc.set_threshold(100_000, 50, 50)  # a season leaves little to collect; looking for it costs a twelfth of the time
    try:
        status = options.run(options) or 0
        sys.stdout.flush()
        return status
    except HatchkitError as error:
        print(f"hatchkit: {error.words(asked_language(options))}", file=sys.stderr)
    except KeyboardInterrupt:
        print("hatchkit: stopped.", file=sys.stderr)
    except BrokenPipeError:  # whoever reads our words has seen enough of them, as in: hatchkit check demo | head
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 0
    except OSError as error:
        if error.strerror:
            told = say.text("file_unusable", dict(file=error.filename, why=error.strerror), asked_language(options))
        else:  # not the system's: a wait that was cut short, say
            told = unforeseen(error, options, asked_language(options))
        print(f"hatchkit: {told}", file=sys.stderr)
    except Exception as error:
        if os.environ.get("HATCHKIT_STRICT"):
            raise
        print(f"hatchkit: {unforeseen(error, options, asked_language(options))}", file=sys.stderr)
    return 2


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog="hatchkit",
        description="Where a hatch lost its eggs, whether that is more than bad luck, and what "
        "to change. A season is one folder; 'demo' is the season that ships with it.",
    )
    parser.add_argument("--version", action="version", version=f"hatchkit {__version__}")
    commands = parser.add_subparsers(title="commands", metavar="COMMAND")

    def command(name, run, *, help):
        sub = commands.add_parser(name, help=help, description=help)
        sub.set_defaults(run=run)
        return sub

    sub = command("check", _check, help="see how a season's sheets were read, what is asked, and what to fix")
    _folders(sub)
    sub.add_argument("--ask", action="store_true", help="answer the open questions one by one")
    sub.add_argument("--full", action="store_true", help="every column and every remark, however many lines")
    sub.add_argument("--csv", metavar="FILE", help="also write the remarks as a CSV file")
    sub.add_argument("--html", metavar="FILE", help="also write all of it as an HTML page")
    sub.add_argument("--tables", metavar="DIR", help="also write what was read as CSV files into a new folder")
    _language(sub)

    sub = command(
        "review", _review, help="write the season review, or of several seasons the page of the years, as HTML"
    )
    _report_options(sub)

    sub = command("poor-hatch", _poor_hatch, help="write a page on one batch: what went wrong and what to change")
    sub.add_argument(
        "folder",
        nargs="+",
        metavar="FOLDER [BATCH]",
        help="season folder or folders, and the batch; without one the poorest hatch is taken",
    )
    _output_options(sub)

    sub = command("next-set", _next_set, help="how many eggs to set for a number of chicks, with dates")
    _folders(sub)
    sub.add_argument("--species", required=True)
    sub.add_argument("--chicks", type=int, required=True, help="chicks wanted, at least")
    sub.add_argument("--sure", type=float, default=0.9, help="how sure, 0 to 1 (default 0.9)")
    sub.add_argument(
        "--set-at",
        metavar="WHEN",
        help="when the eggs go in, such as 2026-04-03T18:00 (a date alone: "
        "noon; default: the first evening for which eggs can be collected from today)",
    )
    sub.add_argument(
        "--save",
        metavar="FOLDER",
        help="also write the dates as a calendar (.ics), a sheet to hang up and a candling sheet",
    )
    _language(sub)

    from hatchkit.trials import command as trial

    trial.options(command("trial", trial.run, help="plan a split trial, or judge one by its plan"))

    sub = command(
        "candling-sheet", _candling_sheet, help="a sheet to take along to the candling of one batch, to print"
    )
    sub.add_argument("folder", nargs="+", metavar="FOLDER [BATCH]", help="season folder, and the batch")
    sub.add_argument("-o", "--out", metavar="FILE", help="HTML file to write (default: in the working folder)")
    _language(sub)

    from hatchkit.start import command as begin

    sub = command("start", begin.start, help="make a new season folder: blank workbook, season.toml, notebooks")
    sub.add_argument("folder")
    _language(sub)
    begin.open_options(command("open", begin.open_lab, help="open JupyterLab on a season folder"))

    from hatchkit.teach import command as teach

    teach.lesson_options(
        command(
            "lesson",
            teach.lesson,
            help="make cases with a known answer for a class, and the teacher's answer book",
        )
    )
    teach.mark_options(
        command("mark", teach.mark, help="compare students' answer forms with the teacher's answer book")
    )
    teach.breakout_sheet_options(
        command(
            "breakout-sheet",
            teach.breakout_page,
            help="write a picture key of unhatched eggs with boxes for a tally",
        )
    )

    command(
        "test", _test, help="run all tests of the kit (source checkout only); options and paths are passed on to pytest"
    )
    return parser


def _folders(sub) -> None:
    """One season folder, several, or a folder of them."""
    sub.add_argument("folder", nargs="+", help="season folder, several, or a folder of years or keepers")


def _report_options(sub) -> None:
    _folders(sub)
    _output_options(sub)


def _language(sub) -> None:
    from hatchkit.say import LANGUAGES

    sub.add_argument("--language", choices=LANGUAGES, help="language (default: that of your sheets, or of season.toml)")


def _load(options):
    """The season that a command is asked for, in the language that it is asked for."""
    import hatchkit as hk

    season = hk.load_season(options.folder)
    return season.spoken_in(options.language) if options.language else season


def _output_options(sub) -> None:
    _language(sub)
    sub.add_argument("-o", "--out", metavar="FILE", help="HTML file to write (default: in the working folder)")
    sub.add_argument("--unit", default="C", help="C or F (default C)")
    sub.add_argument("--full", action="store_true", help="all tables and pictures unfolded, on paper too")
    sub.add_argument(
        "--without-names",
        action="store_true",
        help="no names of keepers, places, pens, machines or files, and nothing that was written freely",
    )


def _check(options) -> None:
    from hatchkit.pages.check_text import check_text
    from hatchkit.records import safe_csv
    from hatchkit.records.writing import safe_output, write_whole

    table = options.csv and safe_output(options.csv, season=options.folder, suffix=".csv")
    page = options.html and safe_output(options.html, season=options.folder, suffix=(".html", ".htm"))
    season = _load(options)
    tables = options.tables and safe_csv.tables_folder(options.tables, season=options.folder)
    if options.ask:
        from hatchkit.widgets.asking import ask

        if ask(season, language=season.language):
            season = _load(options)
            print()
    print(check_text(season, full=options.full, language=season.language))
    if table:
        safe_csv.write_problems_csv(season.problems, table)
        tell("list_written", season.language, path=table)
    if page:
        from hatchkit.pages.check_page import check_page

        write_whole(page, check_page(season, language=season.language))
        tell("page_written", season.language, path=page)
    if tables:
        safe_csv.write_tables(season, tables)
        tell("tables_written", season.language, path=tables)


def _review(options) -> None:
    _report(options, "1_season_review")


def _poor_hatch(options) -> None:
    import hatchkit as hk
    from hatchkit.records.places import folders_and_batch

    options.folder, batch = folders_and_batch(options.folder)
    if batch:  # a wrong name should cost a second, not a whole run
        hk.load_season(options.folder).batch(batch)
    _report(options, "2_poor_hatch", batch=batch)


def _report(options, page: str, batch: str = "") -> None:
    from hatchkit.pages.report import StderrProgress, write_report
    from hatchkit.records.places import given_paths, root_of

    if not sys.warnoptions:
        warnings.simplefilter("ignore")  # warnings are for the people who build the kit; a reader gets sentences
    paths = given_paths(options.folder)
    name = paths[0].stem if len(paths) == 1 and paths[0].is_file() else root_of(paths).name
    print(say.text("page_begun", dict(name=name), asked_language(options)), file=sys.stderr)
    tell(
        "page_written open_in_browser",
        asked_language(options),
        path=write_report(
            options.folder,
            page,
            options.out,
            unit=options.unit,
            batch=batch,
            full=options.full,
            names=not options.without_names,
            language=options.language,
            progress=StderrProgress("Page"),
        ),
    )


def _next_set(options) -> None:
    import hatchkit as hk

    season = _load(options)
    plan = hk.next_set(
        season,
        species=options.species,
        chicks=options.chicks,
        sure=options.sure,
        **({"set_at": options.set_at} if options.set_at else {}),
    )
    print(plan.words())
    if not options.save:
        return
    from hatchkit.pages.candling_sheet import write_candling_sheet
    from hatchkit.pages.next_set import save_next_set

    for path in (
        *save_next_set(plan, options.save),
        write_candling_sheet(Path(options.save) / "candling-sheet.html", plan=plan),
    ):
        tell("wrote", season.language, path=path)


def _candling_sheet(options) -> None:
    from hatchkit.pages.candling_sheet import write_candling_sheet
    from hatchkit.records.places import folders_and_batch

    options.folder, batch = folders_and_batch(options.folder)
    tell("wrote", asked_language(options), path=write_candling_sheet(options.out, _load(options), batch))


def _test(options) -> int:
    root = checkout()
    if root is None:
        raise HatchkitError("tests_need_source", {})
    rest = options.rest or ["-q"]
    shared = [] if "-n" in rest else ["-n", "2", "--dist", "loadfile"]
    return run_and_wait(
        [sys.executable, "-m", "pytest", "--nbval-lax", "--nbval-current-env", *shared, *rest], cwd=root
    )


if __name__ == "__main__":
    sys.exit(main())

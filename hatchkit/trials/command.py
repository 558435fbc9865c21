"""The command `hatchkit trial`: plan a split trial, or judge one by its plan."""

from hatchkit.problems import HatchkitError


def options(sub) -> None:
    """Its options, on a parser of argparse."""
    from hatchkit.terminal import whole

    sub.add_argument("folder", help="season folder (it says what is usual), or the folder of a trial, to judge it")
    sub.add_argument("--compare", nargs=2, metavar=("USUAL", "NEW"), help="the two ways, in words")
    sub.add_argument("--outcome", default="hatch", help="hatch, fertility or hatch_of_fertile (default hatch)")
    sub.add_argument("--difference", type=float, default=0.1, help="difference that must not be missed (default 0.1)")
    sub.add_argument("--eggs", type=whole(4), default=40, help="eggs in each set, both ways together (default 40)")
    sub.add_argument("--sets", type=whole(1), help="so many sets (default: as many as the difference asks for)")
    sub.add_argument(
        "--block",
        action="append",
        metavar="NAME=EGGS",
        default=[],
        help="a hen or pen and its eggs in each set; once for each",
    )
    sub.add_argument("--save", metavar="FOLDER", help="where plan and sheet go, a new folder")


def run(given) -> None:
    """Plan, or judge if the folder holds a plan."""
    from hatchkit.records.places import season_folder
    from hatchkit.say.trial import plan_words, result_words
    from hatchkit.season import load_season
    from hatchkit.trials import sheet
    from hatchkit.trials.analysis import analyse
    from hatchkit.trials.plan import trial

    folder = season_folder(given.folder)
    if (folder / sheet.PLAN).is_file():
        print(result_words(analyse(*sheet.load(folder))))
        return
    plan = trial(
        load_season(folder),
        arms=given.compare or ("as usual", "the new way"),
        outcome=given.outcome,
        difference=given.difference,
        eggs=given.eggs,
        sets=given.sets,
        blocks=dict(_block(text) for text in given.block) or None,
    )
    print(plan_words(plan))
    for path in sheet.save(plan, given.save) if given.save else ():
        print(f"wrote {path}")


def _block(text: str) -> tuple[str, int]:
    name, _, eggs = text.rpartition("=")
    if not name.strip() or not eggs.strip().isdigit():
        raise HatchkitError("trial_block", dict(text=text))
    return name.strip(), int(eggs)

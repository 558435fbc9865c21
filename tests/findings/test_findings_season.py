"""The findings of a season and of a batch: facts with codes, in order, the same whatever shows them."""

import ast
import math
from pathlib import Path

import pytest

import hatchkit as hk
from hatchkit import say
from hatchkit.advice.season_notes import season_notes
from hatchkit.findings.counts import losses, whole_eggs
from hatchkit.findings.finding import SURENESS, Composed, Said
from hatchkit.findings.season import _even

ROOT = Path(__file__).resolve().parents[2]


@pytest.fixture(scope="module")
def season(demo):
    return demo


@pytest.fixture(scope="module")
def review(demo_review):
    return demo_review


def test_the_first_finding_says_what_cost_most_and_the_others_follow(season, review):
    assert [one.question for one in review] == [
        "most",
        "lost",
        "poor",
        "luck",
        "clears",
        "ages",
        "place",
        "course",
        "harm",
        "spells",
        "probes",
        "clock",
        "water",
        "causes",
    ]
    notes = season_notes(season)
    first = notes.iloc[0]
    assert (review.first.answer, review.first.facts["key"]) == ("most_cause_even", first["key"])
    assert review.first.do == Said(f"do_{first['key']}", {}) and review.first.eggs == first["eggs_lost"]
    assert ", ".join(review.first.facts["batches"]) == first["batches"] and len(review) == 14


def test_facts_are_codes_and_numbers_and_never_a_sentence(review):
    for one in review:
        assert one.sure in SURENESS and say.has(one.answer) and say.has(f"ask_{one.question}")
        for name, fact in one.facts.items():
            assert not isinstance(fact, str) or len(fact.split()) <= 3 or name in ("verdict", "found"), (name, fact)


def test_a_hatch_poor_because_of_its_clears_is_a_poor_hatch(season, review):
    assert review["poor"].facts["number"] == 5
    found = hk.poor_hatch(season, "Q4")
    assert found.facts["poor"] == "clears" and found["standing"].answer == "standing_clears"
    assert found.facts["share_of_set"] == pytest.approx(26 / 54)
    assert found.facts["share_hatched"] == pytest.approx(26 / 29)


def test_the_poorest_batch_is_taken_where_none_is_named_and_its_spell_is_shown(season):
    found = hk.poor_hatch(season)
    assert found.facts["batch"] == "H2" and found.first.answer == "why_confident"
    assert found.first.facts["key"] == "cold_spell" and found.first.facts["reason"].code == "reason_spell"
    assert found.first.picture.figure == "climate.excursion_close_up"
    with pytest.raises(KeyError, match="there are why"):
        _ = found["weather"]


def test_an_unknown_batch_or_unit_is_refused(season):
    with pytest.raises(hk.HatchkitError):
        hk.poor_hatch(season, "B77")
    with pytest.raises(hk.HatchkitError):
        hk.review(season, unit="K")


def test_eggs_shared_out_become_whole_eggs_that_add_up(review):
    assert whole_eggs([30.07, 27.7, 47.22, 0.01]).tolist() == [30, 28, 47, 0]
    assert whole_eggs([0.5, 0.5, float("nan")])[:2].sum() == 1 and math.isnan(whole_eggs([float("nan")])[0])
    table = review["lost"].table.rows
    assert table["eggs"].sum() == 764 and (table["eggs"] % 1 == 0).all()
    assert losses(table)["eggs"].sum() == 764 - 505


def test_progress_counts_the_questions(season):
    seen = []
    hk.poor_hatch(season, "H1", progress=lambda *step: seen.append(step))
    assert seen[-1][0] == seen[-1][1] == len(seen)


def test_no_finding_holds_a_sentence_that_a_room_composed():
    """`finding.refused` alone may: the rooms of records and season still refuse in words of their own."""
    calls = [
        node
        for path in (ROOT / "hatchkit" / "findings").glob("*.py")
        if path.stem != "finding"
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8")))
        if isinstance(node, ast.Call) and getattr(node.func, "id", "") == Composed.__name__
    ]
    assert calls == []


def test_a_calendar_too_high_for_the_first_screen_is_folded_and_the_ledger_of_eggs_stands_there(season):
    from dataclasses import replace

    from hatchkit.findings.season import Work, _pictures

    assert _pictures(Work(season, "C"))["picture"].figure == "glance.season_at_a_glance"
    batches = season.batches.assign(set_at=season.batches["set_at"].min())
    crowded = _pictures(Work(replace(season, batches=batches), "C"))
    assert crowded["picture"].figure == "losses.egg_ledger"
    assert [one.figure for one in crowded["more"]] == ["glance.season_at_a_glance"]


def test_causes_that_weigh_the_same_are_told_as_a_tie_and_no_bad_hatch_is_to_go_on_as_it_did(tmp_path):
    from hatchkit.findings.season import review
    from hatchkit.season import load_season

    def first(name, head, *rows):
        folder = tmp_path / name
        folder.mkdir()
        (folder / "batches.csv").write_text("\n".join([head, *rows]) + "\n", encoding="utf-8")
        return review(load_season(folder))

    clear = first("clear", "batch,set date,eggs set,clear,hatched", "A,2025-03-01,20,20,0")
    assert clear["most"].answer == "most_cause_shared" and len(clear["most"].facts["tied"]) > 1
    assert clear["luck"].answer == "luck_by_published" and clear["luck"].facts["published"] == ["A"]
    head = "batch,set date,eggs set,clear,dead in shell,hatched"
    odd = first(
        "odd",
        head,
        *(
            f"{name},2025-0{at}-01,20,3,{dead},{17 - dead}"
            for at, (name, dead) in enumerate([("A", 3), ("B", 3), ("C", 12), ("D", 3)], start=3)
        ),
    )
    assert odd["most"].answer == "most_unusual" and odd["most"].do.code == "do_unlisted"


@pytest.mark.parametrize(
    ("eggs", "even"), [((27.2, 26.4), True), ((30, 27), True), ((30, 26.4), False), ((9, 8), False)]
)
def test_two_causes_that_cost_about_as_much_are_told_together(eggs, even):
    assert _even([dict(kind="cause", eggs_lost=lost) for lost in eggs]) is even
    assert not _even([dict(kind="stage", eggs_lost=lost) for lost in eggs])

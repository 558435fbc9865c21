"""What is made of weights and counts: verdicts, stages that fit, differences, plan, calendar; limits on both sides."""

import math
from types import SimpleNamespace

import numpy as np
import pandas as pd
import pytest

from hatchkit import reference
from hatchkit.advice import causes, dates, different, egg_chances, plan, reasons, tally, what_if
from hatchkit.advice.evidence import Line
from hatchkit.advice.published import STAGES
from hatchkit.advice.reasons import Counted
from hatchkit.advice.tally import Between
from hatchkit.losses.two_phase_shape import cumulative
from hatchkit.usual import beta_binomial
from hatchkit.usual.stages import Usual

NAN = math.nan
STAGE = {stage: place for place, stage in enumerate(STAGES)}


def counted_of(gone=0.0, between=(), **eggs):
    counts = np.zeros(len(STAGES))
    for stage, number in eggs.items():
        counts[STAGE[stage]] = number
    return Counted(counts, tuple(between), gone)


def table_of(*rows):
    return pd.DataFrame(rows, columns=["cause", "share", "firm"])


PAIRS = pd.DataFrame(dict(first=["turning", "fumes"], second=["fumes", "altitude"], share=[0.3, 0.15]))


@pytest.mark.parametrize(("table", "pairs", "gone", "verdict"), [
    ([("turning", 0.8, True)], 0, 0, "confident"), ([("turning", 0.8, False)], 0, 0, "probable"),
    ([("turning", 0.7999, True)], 0, 0, "probable"), ([("turning", 0.5, True)], 0, 0, "probable"),
    ([("turning", 0.4999, True)], 0, 0, "cannot tell"), ([("unlisted", 0.9, True)], 0, 0, "cannot tell"),
    ([("bad_luck", 0.5, True)], 0, 0, "bad luck"), ([("bad_luck", 0.9, True)], 0, 15.01, "cannot tell"),
    ([("bad_luck", 0.9, True)], 0, 15.0, "bad luck"),
    ([("turning", 0.9, True)], 0.5, 0, "two causes"),
    ([("turning", 0.9, True)], 0.5, 15.01, "confident"),
    ([("turning", 0.9, True)], 0.4999, 0, "confident"),
    ([("altitude", 0.9, True)], 0.5, 0, "confident"),
])  # fmt: skip
def test_where_the_verdict_on_a_batch_turns(table, pairs, gone, verdict):
    pairs = PAIRS.assign(share=PAIRS["share"] * pairs / 0.45)
    counted = counted_of(gone=gone, hatched=100 - gone)
    assert causes._verdict(table_of(*table), pairs, counted) == verdict


def test_a_firm_cause_leaves_a_trace_in_a_record_of_its_own():
    lines = [Line("storage", "known", 1.0, 2.5), Line("heat", "known", 1.0, 2.4999)]
    assert causes._firm(NAN, lines) and causes._firm("heat storage", lines)
    assert not causes._firm("heat", lines) and not causes._firm("cold", lines) and not causes._firm(NAN, lines[1:])


def test_no_more_eggs_are_put_down_to_causes_than_were_lost():
    """10 early lost of which 12 and 8 are claimed: halved; 9 late of which 4 are claimed: as they are."""
    pattern = pd.DataFrame(dict(stage=STAGES, eggs=[50.0, 0, 0, 10, 0, 9, 0, 0]))
    claimed = {"a": np.zeros(8), "b": np.zeros(8)}
    claimed["a"][[3, 5]], claimed["b"][3] = [12, 4], 8
    found = causes._losses(claimed, pattern).set_index(["cause", "stage"])["eggs"]
    assert [found["a", "early"], found["b", "early"], found["a", "late"], found["a", "mid"]] == [6, 4, 4, 0]


def test_losses_that_are_mostly_clears():
    """40 eggs, 4 clears usual: sd root(3.6 x (1 + 39 x 0.25 x 0.09)) = 2.6; and most of what is beyond the usual."""
    usual = SimpleNamespace(spread=np.array([0.5]))
    sd = math.sqrt(3.6 * (1 + 39 * 0.25 * 0.09))
    for clears, late, mostly in (
        (4 + 2.0 * sd + 0.01, 2.0, True), (4 + 2.0 * sd - 0.01, 2.0, False),
        (16.0, 2 + 12 * (1 / 0.6 - 1) - 0.01, True), (16.0, 2 + 12 * (1 / 0.6 - 1) + 0.01, False),
    ):  # fmt: skip
        eggs = dict(hatched=40 - clears - late, clear=clears, late=late, early=1.0)
        eggs["hatched"] -= 1
        pattern = pd.DataFrame(dict(stage=STAGES, eggs=[eggs.get(s, 0.0) for s in STAGES],
                                    usual=[30.0, 0, 4, 3, 0, 2, 1, 0]))  # fmt: skip
        assert causes._mostly_clears(pattern, counted_of(**eggs), usual) == mostly


def words_of(row, eggs, expected, rho=0.0, gone=0.0, between=()):
    part = np.zeros(len(STAGES))
    for stage, share in row.items():
        part[STAGE[stage]] = share
    usual = np.zeros(len(STAGES))
    for stage, number in expected.items():
        usual[STAGE[stage]] = number
    counted = counted_of(gone, between, **eggs)
    return tuple(map(len, reasons._of_stages(dict(by_stage=part, eggs_lost=10.0), counted, usual, rho)))


@pytest.mark.parametrize(("part", "late", "gone", "rho", "told"), [
    # 4 late dead usual, luck root(4) = 2: a main stage (15 % of the harm) speaks for the cause above 6.
    (0.15, 6.01, 0, 0, (1, 0)), (0.15, 6.0, 0, 0, (0, 0)), (0.149, 9.0, 0, 0, (0, 0)),
    # ... and against it below 5 where 10 eggs x its part would have put it above 6, unless eggs are not accounted for.
    (0.21, 4.99, 0, 0, (0, 1)), (0.21, 5.0, 0, 0, (0, 0)), (0.19, 4.0, 0, 0, (0, 0)), (0.21, 4.0, 1, 0, (0, 0)),
    # A stage that is none of the cause's (under 3 %) speaks against it above twice the luck.
    (0.029, 8.01, 0, 0, (0, 1)), (0.029, 8.0, 0, 0, (0, 0)), (0.03, 9.0, 0, 0, (0, 0)),
    # Alike eggs: luck is root(4 x (1 + 39 x 0.1)) = 4.43 for 40 eggs.
    (0.15, 8.42, 0, 0.1, (0, 0)), (0.15, 8.44, 0, 0.1, (1, 0)),
])  # fmt: skip
def test_stages_that_fit_a_cause_and_stages_that_do_not(part, late, gone, rho, told):
    assert words_of(dict(late=part), dict(hatched=40 - late, late=late), dict(late=4.0), rho, gone) == told


def test_less_than_one_egg_usual_counts_as_one():
    assert words_of(dict(late=0.5), dict(hatched=38, late=2.0), dict(late=0.9)) == (1, 0)
    assert words_of(dict(late=0.5), dict(hatched=38, late=1.8), dict(late=0.9)) == (0, 0)


@pytest.mark.parametrize(("eggs", "part", "told"), [(9.0, 0.2, (1, 0)), (6.0, 0.2, (0, 0)), (8.01, 0.0, (0, 1)),
                                                    (8.0, 0.0, (0, 0)), (9.0, 0.1, (0, 0))])  # fmt: skip
def test_deaths_between_stages_are_told_by_their_days(eggs, part, told):
    """Mid or late, not known which: 4 usual for both together."""
    group = Between((STAGE["mid"], STAGE["late"]), (1, 1), (0.25, 0.75), eggs, 7.0, 21.0)
    counts = dict(hatched=40 - eggs, mid=eggs / 4, late=3 * eggs / 4)
    assert words_of(dict(late=part), counts, dict(mid=1.0, late=3.0), between=(group,)) == told
    assert counted_of(between=(group,), **counts).assumed()[[STAGE["mid"], STAGE["late"]]].tolist() == [
        eggs / 4, 3 * eggs / 4,
    ]  # fmt: skip


def test_luck_speaks_for_itself_up_to_one_and_a_half_deviations():
    """40 eggs at 0.7: 28 usual, luck root(8.4 x (1 + 39 x 0.05)) = 4.98."""
    usual = SimpleNamespace(shares=np.array([0.7]), rho=0.05)
    edge = 28 - 1.5 * math.sqrt(8.4 * 2.95)
    for chicks, fits in ((edge + 0.01, True), (edge - 0.01, False)):
        found = reasons._for_bad_luck(counted_of(hatched=chicks, late=40 - chicks), usual)
        assert (bool(found["fits"]), bool(found["against"])) == (fits, not fits)


def test_an_item_beside_the_good_batches_and_a_remark_cut_at_a_word():
    warm = dict(item="log_level", unit="K", digits=1.0, value=0.3, kind="gauge", good_batches=2, usual=-0.1)
    want = dict(item="log_level", unit="K", digits=1, value=0.3, usual=-0.1)
    assert reasons.item_facts(warm) == want
    for other in (dict(kind="dose"), dict(good_batches=0)):
        assert reasons.item_facts(warm | other) == want | dict(usual=None)
    for letters, cut in ((160, False), (161, True)):
        assert (len(reasons.remark(dict(notes="a" * 80 + " " + "b" * (letters - 81)))) < letters) == cut


@pytest.mark.parametrize(("factor", "fits", "against"), [(1.5, 1, 0), (1.49, 0, 0), (1 / 1.5, 0, 1), (0.67, 0, 0)])
def test_from_which_factor_on_evidence_is_told(factor, fits, against):
    known = dict(storage=dict(item="storage", name="n", unit="d", digits=0, value=9.0, kind="dose", needs="dates"))
    row = dict(cause="turning", by_stage=np.zeros(8), eggs_lost=0.0)
    pattern = pd.DataFrame(dict(stage=STAGES, usual=np.full(8, 5.0)))
    usual = SimpleNamespace(rho=0.0)
    told = reasons.for_and_against(
        row, [Line("storage", "known", 1.0, factor)], counted_of(hatched=40), pattern, usual, known
    )
    assert (bool(told["fits"]), bool(told["against"]), told["unknown"]) == (bool(fits), bool(against), ())


def test_differences_from_one_and_a_half_spreads_on_and_names_that_three_good_batches_share():
    items = dict(item=["storage", "heat", "cold", "tray"], name="n", unit="", digits=0, value=1.0, usual=0.0)
    items = pd.DataFrame(items | dict(good_batches=1, away=[1.5, -2.5, 1.49, 9.0]))
    rows = {name: dict(species="hen", flock="a", pen="x") for name in "bcd"}
    rows |= {"a": dict(species="hen", flock="z", pen="z"), "e": dict(species="duck", pen="x")}
    rows["d"]["pen"] = NAN
    made = SimpleNamespace(rows=rows, good=pd.Series([1.0, 0.51, 0.6, 0.9, 1.0], index=list("abcde")))
    found = different.different(made, "a", items)
    assert found["item"].tolist() == ["heat", "flock", "storage"] and found["away"].tolist() == [-2.5, 2.0, 1.5]
    assert found.loc[1, ["value", "usual", "good_batches"]].tolist() == ["z", "a", 3]
    made.good["b"] = 0.5
    assert "flock" not in set(different.different(made, "a", items)["item"])


def test_a_death_between_two_days_is_within_its_stages_by_the_published_course():
    limits = (("early", 0.0, 7.0), ("mid", 7.0, 14.0), ("late", 14.0, math.inf))
    found = {stage: (part, mass) for stage, part, mass in tally._within(5.0, 10.0, limits, 21.0)}
    early, mid = cumulative(7.0) - cumulative(5.0), cumulative(10.0) - cumulative(7.0)
    assert set(found) == {"early", "mid"}
    assert found["early"] == pytest.approx((early / cumulative(7.0), early / (early + mid)))
    assert found["mid"] == pytest.approx((mid / (cumulative(14.0) - cumulative(7.0)), mid / (early + mid)))
    assert tally._within(8.0, 9.0, limits, 21.0)[0][0] == "mid"
    group = Between((3, 4), (1, 1), (0.2, 0.6), 8.0, 5.0, 10.0)
    assert tally.shared(np.ones(8), [group])[[3, 4, 5]] == pytest.approx([3, 7, 1])


def test_eggs_without_an_end_are_no_chicks_and_where_counted_no_clears():
    shares = np.array([0.7, 0.05, 0.1, 0.05, 0.02, 0.05, 0.02, 0.01])
    assert tally.loss_shares(shares, False)[[0, 2]] == pytest.approx([0, 1 / 3])
    assert tally.loss_shares(shares, True)[[0, 2, 3]] == pytest.approx([0, 0, 0.25])


def test_causes_of_hardly_an_egg_are_put_to_what_is_not_explained():
    table = pd.DataFrame(dict(key=["a", "b", "usual", "not_explained", "unaccounted"], eggs=[0.5, 0.49, 3.0, 0.0, 0.0],
                              kind=["cause", "cause", "usual", "not_explained", "unaccounted"],
                              firmest=[0.5, 0.9, NAN, NAN, NAN], name=["Aa", "Bb", "u", "n", "x"]))  # fmt: skip
    found = what_if._closed(table).set_index("key")["eggs"]
    assert found.to_dict() == dict(a=0.5, usual=3.0, not_explained=0.49)


OWN = pd.DataFrame(dict(batch=list("abcd"), eggs_set=[40, 40, 40, 40], hatched=[30, 32, 28, 10]))
LEVEL = dict(share_of_set=0.7, sd=0.148)


def test_rows_of_the_plan():
    weight = beta_binomial.learn(OWN["hatched"], OWN["eggs_set"], 0.7, 0.148)
    table = plan._eggs(weight, 20, 0.7)
    assert table["sure"].tolist() == [0.5, 0.7, 0.8, 0.95]
    for row in table.to_dict("records"):
        assert row["chance"] == pytest.approx(beta_binomial.chance_learned(weight, 20, row["eggs"]))
        assert row["chance"] >= row["sure"] > beta_binomial.chance_learned(weight, 20, row["eggs"] - 1)
        ends = beta_binomial.range_of_chicks(weight, row["eggs"])
        assert (row["chicks_low"], row["chicks_middle"], row["chicks_high"]) == ends
    assert plan._eggs(weight, 6000, 0.9)["eggs"].isna().all()


def test_the_one_poor_batch_that_a_plan_rests_on():
    """At most 0.6 of what the others hatched, and at most 0.8 of the eggs without it; of three batches at least."""

    def driver(own, sure=0.9):
        weight = beta_binomial.learn(own["hatched"], own["eggs_set"], 0.7, 0.148)
        return plan._driver(own, LEVEL, plan._eggs(weight, 20, sure), 20, sure)

    found = driver(OWN)
    rest = beta_binomial.learn([30, 32, 28], [40] * 3, 0.7, 0.148)
    assert (found["batch"], found["eggs_set"], found["hatched"]) == ("d", 40, 10)
    assert found["without"] == beta_binomial.eggs_learned(rest, 20, sure=0.9)
    assert driver(OWN.iloc[1:]) is not None and driver(OWN.iloc[2:]) is None
    assert driver(OWN.assign(hatched=[30, 30, 30, 19])) is None
    many = pd.concat([OWN.iloc[:3]] * 9 + [OWN.iloc[3:]], ignore_index=True)
    assert driver(many) is None


@pytest.mark.parametrize(("chicks", "sure"), [(0, 0.9), (2.5, 0.9), (True, 0.9), (5, 0.0), (5, 1.0)])
def test_wishes_that_are_none(chicks, sure):
    with pytest.raises(Exception, match="chicks|sure"):
        plan._wish(chicks, OWN, sure)


def test_wishes():
    assert (plan._wish(1, OWN, 0.9), plan._wish(7.0, OWN, 0.01), plan._wish(None, OWN, 0.9)) == (1, 7, 29)
    assert plan._wish(None, OWN.iloc[:0], 0.9) == 12 and plan._wish(None, OWN.assign(hatched=0), 0.9) == 1


def test_the_curve_of_chances_reaches_beyond_the_surest_number(monkeypatch):
    monkeypatch.setattr(egg_chances, "own_hatch", lambda season, species: OWN)
    level = plan.published_level("chicken")
    weight = beta_binomial.learn(OWN["hatched"], OWN["eggs_set"], level["share_of_set"], level["sd"])
    made = SimpleNamespace(basis=dict(species="chicken", chicks=20), eggs=plan._eggs(weight, 20, 0.9))
    found = egg_chances.egg_chances(None, made)
    assert found["eggs"].iloc[0] == 20 and found["eggs"].iloc[-1] == round(1.35 * made.eggs["eggs"].max())
    assert 55 <= len(found) <= 60
    assert found["chance"].tolist() == pytest.approx(
        [beta_binomial.chance_learned(weight, 20, int(eggs)) for eggs in found["eggs"]]
    )
    none = SimpleNamespace(basis=dict(species="chicken", chicks=20), eggs=made.eggs.assign(eggs=pd.NA))
    assert egg_chances.egg_chances(None, none)["eggs"].iloc[-1] == 60
    one = SimpleNamespace(basis=dict(species="chicken", chicks=2), eggs=made.eggs.assign(eggs=2))
    assert egg_chances.egg_chances(None, one)["eggs"].tolist() == [2, 3, 4]


def test_every_hour_of_a_calendar_by_hand():
    """Hens, eggs of 5 days: middle 21 d 2 h, 20 h either way; 12 h to dry, two days more for the rest."""
    hen, when = reference.species("chicken"), pd.Timestamp("2026-03-20 18:00", tz="Europe/Berlin")
    table = dates.calendar(hen, when, stored_days=5.0).set_index("step")
    last = max(21 + 22 / 24, float(hen["days_high"]))
    want = dict(collect=-hen["storage_best_days"], machine_on=-1, warm_up=-0.5, set=0, candle1=hen["candle1_day"],
                candle2=hen["candle2_day"], care_day=hen["embryo_care_day"], transfer=hen["transfer_day"],
                first_hatch=21 - 18 / 24, last_hatch=last, take_off=last + 0.5, open_unhatched=last + 2)  # fmt: skip
    assert table["day"].drop("cooling", errors="ignore").to_dict() == pytest.approx(want)
    hours = (table["ends"] - table["starts"]) / pd.Timedelta(hours=1)
    assert hours[["machine_on", "candle1", "candle2", "open_unhatched"]].tolist() == [2, 2, 2, 2]
    assert hours[["collect", "warm_up", "set", "care_day", "transfer", "first_hatch", "take_off"]].eq(1).all()
    assert table.loc["transfer", "starts"] == (when.tz_convert("UTC") + pd.Timedelta(days=18)).round("h")
    assert table["day"].is_monotonic_increasing


def test_a_batch_of_the_usual_shares_in_the_order_of_stages():
    shares = np.arange(8.0)
    assert causes._in_stage_order(shares).tolist() == [0, 7, 1, 3, 4, 5, 6, 2]
    assert Usual(shares, None, None, 0.1, 2, 50, 0.5).shares is shares

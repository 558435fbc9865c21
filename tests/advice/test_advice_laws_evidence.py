"""Values of the items of evidence and what they count, by hand: boundaries on both sides and small whole tables."""

import math
from types import SimpleNamespace

import numpy as np
import pandas as pd
import pytest

from hatchkit import reference
from hatchkit.advice import evidence, evidence_climate, evidence_machine, evidence_records
from hatchkit.advice.published import STAGES, published_shares
from hatchkit.climate.dose import half_dose
from hatchkit.usual.stages import Usual

NAN = math.nan


def columns_of(size=21 * 24, **more):
    """Hourly readings of a hen's batch from setting to hatch in which nothing happens."""
    hours = np.arange(size, dtype=float)
    plain = dict(hen_days=hours / 24, age_days=hours / 24, hours=np.ones(size), egg_c=np.full(size, 37.5),
                 level=np.zeros(size, int), rate=np.ones(size))  # fmt: skip
    return plain | {name: np.asarray(values) for name, values in more.items()}


def changed(values, first, last, to):
    values = values.copy()
    values[first:last] = to
    return values


def test_cold_counts_in_spells_at_alarm_and_after_the_warming_up():
    """Half of it is lost in five hours of day 10; not counted are the first 18 h and the watch level."""
    plain = columns_of()
    rate = changed(changed(plain["rate"], 0, 19, 0.5), 250, 260, 0.5)
    level = changed(changed(plain["level"], 0, 19, -2), 250, 255, -2)
    level[255:260] = -1
    rate[300], level[300] = 1.1, -2
    found = evidence_climate._doses(columns_of(rate=rate, level=level))
    assert found.cold[10] == pytest.approx(2.5) and found.cold.sum() == pytest.approx(2.5)
    assert found.logged == pytest.approx(min(504 / (20.5 * 24 * 1.0), 1.0)) and len(found.heat) == 21
    late = evidence_climate._doses(columns_of(rate=changed(plain["rate"], 0, 20, 0.5), level=changed(level, 0, 20, -2)))
    assert late.cold[0] == pytest.approx(0.5)  # of hours 0 to 19 only the last lies beyond three quarters of a day


def test_heat_is_told_by_the_dose_that_halves_the_hatch_at_its_age():
    """Two hours at 43 degC on day 5 and one at 44 (three times as much) on day 18."""
    egg = changed(changed(columns_of()["egg_c"], 120, 122, 43.0), 432, 433, 44.0)
    found = evidence_climate._doses(columns_of(egg_c=egg))
    assert found.heat[5] == pytest.approx(1 / half_dose(5.0) + 1 / half_dose(121 / 24))
    assert found.heat[18] == pytest.approx(3 / half_dose(18.0)) and found.heat.sum() == found.heat[[5, 18]].sum()
    # Of any 24 hours beside the age at their end: both hours of day 5 lie within until hour 143.
    want = max([2 / half_dose(h / 24) for h in range(121, 144)] + [3 / half_dose(h / 24) for h in range(432, 456)])
    assert evidence_climate._heat(columns_of(egg_c=egg)) == pytest.approx(want)
    # An hour at hour 120 and one at hour 143.5 are within 24 hours of each other, at 144 they are not.
    for second, hours in ((143.5, 2), (144.0, 1)):
        egg, age = changed(columns_of()["egg_c"], 120, 121, 43.0), columns_of()["age_days"]
        egg[144], age[144] = 43.0, second / 24
        found = evidence_climate._heat(columns_of(egg_c=egg, age_days=age, hen_days=np.full(504, 5.0)))
        assert found == pytest.approx(hours / half_dose(5.0))


@pytest.mark.parametrize("days", [21.0, 28.0])
def test_the_share_that_was_logged(days):
    """Half of the hours of all its days; hours before setting and after the hatch do not count."""
    size = int(days * 24)
    age = np.arange(-24, size + 48) / 24
    spoken = np.where(np.arange(len(age)) % 2 == 0, 1.0, 0.0)
    made = columns_of(len(age), age_days=age, hen_days=age * 21 / days, hours=spoken)
    found = evidence_climate._doses(made)
    whole = 20.5 * 24 * days / 21
    assert found.logged == pytest.approx(size / 2 / whole)
    nothing = evidence_climate._doses(columns_of(hours=np.zeros(504)))
    assert nothing.logged == 0.0


def test_a_chill_about_the_transfer():
    """Twelve hours either way of hour 432: ten hours that lost half; unknown where under twelve hours were logged."""
    setting = np.arange(504) < 432
    rate, level = np.ones(504), np.zeros(504, int)
    for hour in (419, 420, 432, 444, 445):
        rate[hour], level[hour] = 0.5, -2
    made = columns_of(rate=rate, level=level)
    assert evidence_climate._about_transfer(made, setting) == pytest.approx(1.5)
    assert math.isnan(evidence_climate._about_transfer(made, np.ones(504, bool)))
    assert math.isnan(evidence_climate._about_transfer(made, np.zeros(504, bool)))
    for there, known in ((12, True), (11, False)):
        hours = changed(np.ones(504), 420 + there, 445, 0.0)
        assert math.isnan(evidence_climate._about_transfer(made | dict(hours=hours), setting)) != known


def test_humidity_hours_and_water_beside_what_is_wanted():
    for rh, away in ((40.0, -5.0), (45.0, 0.0), (50.0, 0.0), (58.0, 3.0)):
        assert evidence_climate._outside(np.array([rh - 1, rh, rh + 9, NAN]), 45.0, 55.0) == pytest.approx(away)
    assert math.isnan(evidence_climate._outside(np.array([NAN]), 45.0, 55.0))
    first = pd.Timestamp("2025-03-22 06:00")
    assert evidence_climate._spread(dict(first_hatch_at=first, last_hatch_at=first + pd.Timedelta(hours=30.5))) == 30.5
    assert math.isnan(evidence_climate._spread(dict(first_hatch_at=first, last_hatch_at=pd.NaT)))
    assert math.isnan(evidence_climate._spread(dict(first_hatch_at=pd.NaT, last_hatch_at=first)))
    target = dict(loss_low_share=0.11, loss_high_share=0.13)
    assert evidence_climate._water(dict(weighed="eggs", projected_share=0.15), target) == pytest.approx(3.0)
    for water in ({}, dict(weighed="no", projected_share=0.15), dict(weighed="tray", projected_share=NAN)):
        assert math.isnan(evidence_climate._water(water, target))


def test_storage_flock_positions_and_opened_clears_by_hand():
    assert [evidence_records._beyond(days) for days in (4.0, 0.0, -3.0)] == [4.0, 0.0, -1.5]
    assert [evidence_records._outside(weeks) for weeks in (20, 26, 60, 65)] == [6, 0, 0, 5]
    assert math.isnan(evidence_records._outside(NAN))
    usual = reference.load("evidence_items").set_index("item").at["malpositions", "published"]
    lie = evidence_records._malpositions
    assert lie(dict(broken_late=10, malpositioned=4)) == pytest.approx((4 + 5 * usual) / 15)
    assert lie(dict(broken_late=3, malpositioned=0)) == pytest.approx(5 * usual / 8)
    assert math.isnan(lie(dict(broken_late=2, malpositioned=1))) and math.isnan(lie(dict(broken_late=9)))
    opened = evidence_records._opened
    assert opened(dict(opened1_infertile=3, opened1_dead=1)) == 0.25 and opened(dict(opened1_infertile=3)) == 0.0
    assert opened(dict(opened1_dead=3)) == 1.0 and math.isnan(opened(dict(opened1_infertile=1, opened1_dead=1)))
    assert [evidence_records._yes(word) for word in ("no", "0", "yes", "by rail")] == [0, 0, 1, 1]
    assert math.isnan(evidence_records._yes(None)) and math.isnan(evidence_records._yes(" "))


def test_a_flock_beside_the_others_in_doublings():
    """Flock a: batches 1 and 2; flock b: 3 and 4. Three eggs are added at the common rate of each kind of bird."""
    batches = pd.DataFrame(dict(batch=list("12345"), species=["hen"] * 4 + ["duck"], flock=list("aabba")))
    counts = pd.DataFrame(0.0, index=list("12345"), columns=list(STAGES))
    counts["hatched"], counts["clear"], counts["early"], counts["mid"] = 20.0, [8, 6, 1, 2, 9], [1, 2, 3, 4, 5], 1.0
    found = evidence_records.flock_items(batches, counts, pd.Series(True, index=counts.index))
    eggs = counts.sum(axis=1)
    rate = (17 + 0.5) / (eggs[:4].sum() + 1)
    mates, others = (6 + 3) / (eggs["2"] + 3 / rate), (3 + 3) / (eggs["3"] + eggs["4"] + 3 / rate)
    assert found.loc["1", "flock_clears"] == pytest.approx(np.log2(mates / others))
    dead = (10 + 4 + 0.5) / (eggs[:4].sum() + 1)
    mates, others = (3 + 3) / (eggs["2"] + 3 / dead), (9 + 3) / (eggs["3"] + eggs["4"] + 3 / dead)
    assert found.loc["1", "flock_deaths"] == pytest.approx(np.log2(mates / others))
    assert found.loc["5"].isna().all()
    known = pd.Series([True, True, True, False, True], index=counts.index)
    less = evidence_records.flock_items(batches, counts, known)
    assert np.isnan(less.loc["1", "flock_clears"]) and less.loc["1", "flock_deaths"] == found.loc["1", "flock_deaths"]
    assert less.loc["4", "flock_clears"] > -9  # its own clears are not asked for, those of its flock and of others are


def test_how_good_a_batch_was_as_a_measure():
    """1.5 deviations above (share - usual), and the share against the published less 0.25 in steps of 0.15; 0 to 1."""
    shares = dict(a=0.9, b=0.62, c=0.5, d=0.1)
    counts = pd.DataFrame(0.0, index=list(shares), columns=list(STAGES))
    counts["hatched"] = [40 * share for share in shares.values()]
    counts["late"] = [30 - 40 * min(share, 0.75) for share in shares.values()]
    gone = pd.Series([40 - counts.loc[name].sum() for name in shares], index=list(shares))
    usual = {name: Usual(np.array([0.7]), None, None, 0.05, 3, 99, 0.9) for name in shares}
    found = evidence._good(SimpleNamespace(counts=counts, unaccounted=gone), usual)
    sd = math.sqrt(0.7 * 0.3 * (1 / 40 + 0.05))
    for name, share in shares.items():
        want = min((share - 0.7) / sd + 1.5, (share - published_shares()[0] + 0.25) / 0.15)
        assert found[name] == pytest.approx(min(max(want, 0), 1))
    assert 0 < found["b"] < 1 and found["a"] == 1 and found["d"] == 0


def test_the_clock_of_a_machine_needs_two_other_batches():
    clock = pd.Series([1.0, 5, 9, 30, NAN], index=list("abcde"))
    rows = {name: dict(incubator=machine) for name, machine in zip("abcde", ("m", "m", "m", "n", "m"), strict=True)}
    found = evidence_machine.clock_of_machine(clock, rows)
    assert found[["a", "b", "c", "e"]].tolist() == [7, 5, 3, 5] and np.isnan(found["d"])
    rows["a"] = dict(incubator=None)
    assert evidence_machine.clock_of_machine(clock, rows)[["a", "b", "c"]].isna().all()


@pytest.mark.parametrize(("height", "good", "above"), [
    (1600.0, 0.51, True), (1599.0, 0.51, False), (1600.0, 0.5, False),
])  # fmt: skip
def test_thin_air_is_judged_beside_the_places_that_did_well(height, good, above):
    values = pd.DataFrame(dict(altitude=[height, 1000.0, 200.0, 3000.0, NAN]), index=list("abcde"))
    worth = pd.Series([1.0, good, 0.0 if good == 0.5 else 0.9, 0.0, 1.0], index=list("abcde"))
    gathered = SimpleNamespace(values=values, good=worth)
    assert evidence._above_the_good(gathered, "a") == above


def test_each_fact_counts_once():
    """Of a fact the strongest for and the strongest against stand; equal ones once."""
    rows = [["a", "f", "known", 3.0], ["b", "f", "said", 2.0], ["c", "f", "said", 0.25], ["d", "f", "said", 0.5],
            ["e", "g", "said", 3.0], ["h", "k", "said", 2.0], ["i", "k", "said", 2.0],
            ["j", "m", "known", 1.0]]  # fmt: skip
    found = {line.part: line.factor for line in evidence._each_fact_once(rows)}
    assert found == dict(a=3.0, b=1.0, c=0.25, d=1.0, e=3.0, h=2.0, i=1.0, j=1.0)
    assert [line.alone for line in evidence._each_fact_once(rows)] == [row[3] for row in rows]


def test_the_scale_rules_a_side_out():
    assert evidence._scale_first(["water_loss", "f", "known", 3.0])[3] == 0.01
    assert evidence._scale_first(["water_loss", "f", "known", 0.005])[3] == 0.005
    assert evidence._scale_first(["rh_set", "f", "known", 3.0])[3] == 1.0
    assert evidence._scale_first(["rh_set", "f", "known", 0.4])[3] == 0.4


def gathered_of(values, **more):
    """Batches a (the one asked about), b and c (same species, good 1 and 0.8) and d (another species)."""
    items = reference.load("evidence_items")["item"]
    table = pd.DataFrame(NAN, index=list("abcd"), columns=items)
    for item, row in values.items():
        table[item] = row
    machine = more.pop("machine", dict(a="m", b="m", c="n", d="m"))
    rows = {name: dict(species="duck" if name == "d" else "hen", incubator=machine[name]) for name in "abcd"}
    base = dict(values=table, good=pd.Series([0.0, 1.0, 0.8, 1.0], index=list("abcd")), rows=rows, doses={}, water={})
    return SimpleNamespace(**base | more)


def test_items_beside_what_is_usual_with_this_keeper():
    """Values of b and c, drawn to the published one as if it were a quarter of a batch; another machine counts 0.1."""
    made = gathered_of(dict(storage=[9.0, 3, 5, 90], log_level=[0.9, 0.1, 0.6, 9.0], heat=[0.4, 9, 5, 7]))
    found = evidence.evidence(made, "a").set_index("item")
    items = reference.load("evidence_items").set_index("item")
    for item, weights, values in (("storage", (1.0, 0.8), (3, 5)), ("log_level", (1.0, 0.08), (0.1, 0.6))):
        published, spread = items.loc[item, ["published", "spread"]]
        total = sum(weights)
        middle = (0.25 * published + np.dot(weights, values)) / (0.25 + total)
        around = np.dot(weights, (np.array(values) - middle) ** 2)
        wide = math.sqrt((3 * spread**2 + around) / (3 + total))
        row = found.loc[item]
        assert [row["usual"], row["spread"]] == pytest.approx([middle, wide])
        assert row["away"] == pytest.approx((row["value"] - middle) / wide)
    assert found.loc["storage", "good_batches"] == 2 and found.loc["log_level", "good_batches"] == 1
    # A dose is told beyond the middle one of the good batches of its machine, b and d.
    assert found.loc["heat", "usual"] == 8 and found.loc["heat", "good_batches"] == 0


def factor_of(made, cause, item):
    lines = evidence.told(made, "a", evidence.evidence(made, "a"))[cause]
    return next(line.alone for line in lines if line.part == item)


def points_of(cause, item):
    table = reference.load("cause_evidence").set_index(["cause", "item"])
    return [tuple(map(float, pair.split(":"))) for pair in table.at[(cause, item), "points"].split()]


def test_what_an_item_counts_lies_on_the_line_through_its_points():
    """Straight in the log of the factor between two points, level beyond; a gauge by its distance from the usual."""
    for cause, item in (("heat_spell", "heat"), ("altitude", "altitude"), ("long_storage", "storage")):
        points = points_of(cause, item)
        kind = reference.load("evidence_items").set_index("item").at[item, "kind"]
        for (x, y), (x2, y2) in zip(points[:-1], points[1:], strict=True):
            usual = (
                0.0 if kind == "dose" else evidence.evidence(gathered_of({}), "a").set_index("item").at[item, "usual"]
            )
            made = gathered_of({item: [(x + x2) / 2 + usual, NAN, NAN, NAN]})
            made.doses = dict(a=SimpleNamespace(logged=1.0))
            assert factor_of(made, cause, item) == pytest.approx(math.sqrt(y * y2)), (cause, item, x)
    assert factor_of(gathered_of({}), "heat_spell", "heat") == 1.0


def test_what_little_was_logged_says_little_against_a_dose():
    points = points_of("heat_spell", "heat")
    least = points[0][1]
    assert least < 1
    for logged in (1.0, 0.3):
        made = gathered_of(dict(heat=[points[0][0], NAN, NAN, NAN]), doses=dict(a=SimpleNamespace(logged=logged)))
        assert factor_of(made, "heat_spell", "heat") == pytest.approx(logged * least + 1 - logged)


def test_a_level_without_a_good_batch_of_its_machine_counts_less():
    x, y = points_of("warm_throughout", "log_level")[-1]
    made = gathered_of(dict(log_level=[x + 50.0, NAN, NAN, NAN]))
    assert factor_of(made, "warm_throughout", "log_level") == pytest.approx(y**0.6)
    made = gathered_of(dict(log_level=[x + 50.0, 0.0, NAN, NAN]))
    assert factor_of(made, "warm_throughout", "log_level") == pytest.approx(y)


def test_a_place_far_above_the_good_ones_counts_twice():
    x, y = points_of("altitude", "altitude")[-1]
    assert y > 1
    for other, power in ((x - 600, 2), (x - 599, 1)):
        made = gathered_of(dict(altitude=[x, other, NAN, NAN]))
        assert factor_of(made, "altitude", "altitude") == pytest.approx(y**power)

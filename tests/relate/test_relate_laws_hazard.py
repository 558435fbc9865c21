"""What can be related at all, weights and centred doses, and what goes with the exposure: small tables by hand."""

import math
from types import SimpleNamespace

import numpy as np
import pandas as pd
import pytest

from hatchkit.relate import confounding, exposure, hazard, relation
from hatchkit.relate.design import design
from hatchkit.relate.effect import _batch_dispersion
from hatchkit.relate.exposure import _window_doses
from hatchkit.relate.nothing_to_relate import nothing_to_relate
from hatchkit.relate.verdict import rules

NAN = math.nan


def table_of(doses=(1.0, 1.0, 0.0, 0.0, 0.0), *, window=1, eggs=20.0, died=2.0, **more):
    rows = dict(
        batch=[f"b{n}" for n in range(len(doses))], window=window, days=7.0, at_risk=eggs, died=died, dose=doses
    )
    return pd.DataFrame(rows).assign(**more)


def why(**more):
    return nothing_to_relate(design(table_of(**more)))


@pytest.mark.parametrize(("more", "told"), [
    ({}, {}), (dict(died=NAN), "no_window"), (dict(doses=(NAN, NAN, NAN)), "not_logged"),
    (dict(doses=(1.0, NAN, NAN)), "one_batch"), (dict(doses=(1.0, 0.0)), {}), (dict(died=0.0), "no_death"),
    # One death is enough, unless it is in a window that was not logged; so is one egg that lived.
    (dict(doses=(1.0, 0.0, NAN), died=[0.0, 0, 5]), "no_death"), (dict(doses=(1.0, 0.0, NAN), died=[0.0, 1, 5]), {}),
    (dict(doses=(1.0, 0.0, NAN), died=[20.0, 20, 5]), "all_died"),
    (dict(doses=(1.0, 0.0, NAN), died=[20.0, 19, 5]), {}),
    (dict(doses=(0.0, 0.0, 0.0)), "no_excursion"), (dict(doses=(2.0, 2.0, NAN)), "same_dose"),
    (dict(doses=(2.0, 2.0, 1.0)), {}), (dict(doses=(2.0, 1.0), species=["hen", "duck"]), "same_dose"),
])  # fmt: skip
def test_why_there_is_nothing_to_relate(more, told):
    assert why(**more) == (told if told == {} else dict(why=told))


def test_windows_with_an_excursion_that_were_left_out():
    found = why(died=[NAN, NAN, 2, 2, 2])
    assert found == dict(why="uncounted", windows=2, batches=["b0", "b1"], not_counted=True)
    assert not why(died=[NAN, 99.0, 2, 2, 2])["not_counted"]
    assert why(died=[2, NAN, 2, 2, 2]) == {}


def test_without_a_test_or_a_power_nothing_is_claimed():
    test, power = hazard.NO_TEST, hazard.NO_POWER
    assert (test["arrangements"], test["exact"], test["kind"]) == (0, True, "none")
    assert all(math.isnan(test[name]) for name in ("more", "either", "smallest", "drawn", "spread"))
    assert (power["doubling"], power["detectable"], len(power["power"])) == (0.0, math.inf, 0)
    assert len(power["ratios"]) == 0 and math.isnan(power["spread"])


def test_a_window_weighs_as_much_as_its_eggs_tell():
    """20 and 40 eggs at 10 %, eggs alike by 0.1: 2 / 2.9 and 4 / 4.9, mean; 10 eggs at 20 % in the other: 2 / 1.9."""
    made = design(pd.concat([table_of((1.0, 0.0), eggs=[20.0, 40]), table_of((0.0, 0.0), window=2, eggs=10.0)]))
    found = hazard.window_weights(made, np.array([0.1, 0.1, 0.2, 0.2]), 0.1)
    first, second = (2 / 2.9 + 4 / 4.9) / 2, 2 / 1.9
    assert found == pytest.approx([math.sqrt(first / second)] * 2 + [1.0, 1.0])


def test_doses_are_centred_within_a_pool_and_a_window():
    """Usual dose 2: scores 1, 0.5 and 0 of three batches, mean 0.5; one that was not logged stays out of it."""
    rows = table_of((3.0, 1.0, 0.0, NAN, 2.0), incubator=["a", "a", "a", "a", "b"])
    made = design(rows)
    assert made.step == 2.0
    mean = (1.5 + 0.5) / 3
    found = hazard._centred(made)[:, 0]
    assert found == pytest.approx([1.5 - mean, 0.5 - mean, -mean, 0, 0])


def row_of(column, levels, doses):
    made = design(table_of(doses, **{column: levels}), covariates=[])
    found = confounding.confounding(made)
    return None if found.empty else found.set_index("factor").loc[column]


def test_a_group_with_both_kinds_on_either_side_is_apart():
    """Of four each 2 and 1 exposed: means 1/2 and 1/4 about 3/8, 8 x 1/64 of 8 x 15/64."""
    found = row_of("flock", list("aaaabbbb") + ["", None], (1, 1, 0, 0, 1, 0, 0, 0, 1.0, 0))
    assert found["explained"] == pytest.approx(1 / 15)
    assert found[["batches", "levels", "levels_exposed", "levels_mixed"]].tolist() == [8, 2, 2, 2]
    assert (found["apart"], found["how"], found["hit"]) == (True, "within", ["a", "b"])


def test_a_group_that_holds_all_exposed_batches_and_no_other():
    found = row_of("flock", list("aabbb"), (1, 1.0, 0, 0, 0))
    assert (found["apart"], found["how"], found["hit"]) == (False, "one_sided", ["a"])
    assert found[["explained", "levels_exposed", "levels_mixed"]].tolist() == pytest.approx([1, 1, 0])
    # Flocks that each exposed batch has to itself are batches; an incubator is one all the same.
    assert row_of("flock", list("abccc"), (1, 1.0, 0, 0, 0))["how"] == "within"
    assert row_of("flock", list("abccc"), (1, 1.0, 0, 0, 0))["apart"]
    assert row_of("incubator", list("abccc"), (1, 1.0, 0, 0, 0))["how"] == "one_sided"
    for doses in ((1.0, 1, 1, 1, 1), (0.0, 0, 0, 0, 0)):
        assert row_of("flock", list("aabbb"), doses) is None
    assert row_of("flock", list("aaaaa"), (1, 1.0, 0, 0, 0)) is None


@pytest.mark.parametrize(("free", "share", "apart"), [(1, 60 / 61, False), (4, 60 / 64, True)])
def test_a_group_that_explains_nearly_all_is_not_apart(free, share, apart):
    """Of 60 + n batches of one flock 60 exposed, none of 60 others: what lies between the flocks ..."""
    found = row_of("flock", ["a"] * (60 + free) + ["b"] * 60, (1.0,) * 60 + (0.0,) * (free + 60))
    batches = 120 + free
    among = 60 * (1 - 60 / batches)  # ... over that of 60 among all
    between = (60 + free) * (share - 60 / batches) ** 2 + 60 * (60 / batches) ** 2
    assert found["explained"] == pytest.approx(between / among)
    assert (found["explained"] < 0.95) == apart and rules()["explained_share"] == 0.95
    assert (found["apart"], found["how"]) == (apart, "within" if apart else "nearly")


def inside(column, rows):
    """Rows: (species, incubator, batches, exposed ones)."""
    doses, species, machine = [], [], []
    for kind, place, batches, exposed in rows:
        doses += [1.0] * exposed + [0.0] * (batches - exposed)
        species += [kind] * batches
        machine += [place] * batches
    made = design(table_of(doses, species=species, incubator=machine))
    return confounding._can_show_inside(made, column)


@pytest.mark.parametrize(("rows", "can"), [
    # Inside 10 ways, too few for 5 %; across 45. With seven 21 ways inside. Exactly 20 are enough.
    ([("s", "A", 5, 2), ("s", "B", 5, 0)], False), ([("s", "A", 7, 2), ("s", "B", 5, 0)], True),
    ([("s", "A", 6, 3), ("s", "B", 9, 0)], True), ([("s", "A", 3, 3), ("s", "B", 3, 0)], False),
    # Across only 8 ways: no comparison could show it, so that the incubator takes nothing away.
    ([("s", "A", 4, 1), ("s", "B", 4, 0)], True),
])  # fmt: skip
def test_whether_comparisons_inside_a_machine_could_show_a_clear_sign(rows, can):
    assert inside("incubator", rows) is can
    assert inside("species", [(place, kind, *rest) for kind, place, *rest in rows]) is can
    assert inside("flock", rows)


def test_across_machines_species_stay_apart_and_the_other_way_round():
    """Across machines 6 x 4 = 24 ways, across species 10 in the machine that had the exposure; inside both 3 x 2."""
    rows = [("s", "A", 3, 1), ("t", "A", 2, 1), ("s", "B", 3, 0), ("t", "B", 2, 0)]
    assert not inside("incubator", rows) and inside("species", rows)


def test_doses_of_a_batch_are_summed_and_it_starts_with_its_first_window():
    start = pd.to_datetime(["2025-03-08", "2025-03-01", "2025-03-02"], utc=True)
    rows = pd.DataFrame(dict(batch=["a", "a", "b"], window=[2, 1, 1], days=7.0, at_risk=20, died=1,
                             dose=[1.0, 2.0, 0.0], stored_days=[5.0, 5, 2], start=start))  # fmt: skip
    found = confounding.batch_table(design(rows))
    assert found["dose"].tolist() == [3, 0] and found["exposed"].tolist() == [True, False]
    assert found["start"].tolist() == [start[1], start[2]] and found["stored_days"].tolist() == [5, 2]


@pytest.mark.parametrize(("explained", "how"), [
    (0.099, "hardly"), (0.101, "in_part"), (0.499, "in_part"), (0.501, "together"),
])  # fmt: skip
def test_from_which_share_on_an_amount_goes_with_the_exposure(explained, how):
    """Four exposed and four free at r beside its root, the rest of the variance inside both: r squared is explained."""
    hit = np.array([1.0] * 4 + [-1.0] * 4)
    inside = np.array([3.0, -1, -1, -1] * 2) / math.sqrt(3)
    value = 10 + math.sqrt(explained) * hit + math.sqrt(1 - explained) * inside
    found = row_of("stored_days", value, (hit > 0).astype(float))
    assert found["explained"] == pytest.approx(explained) and (found["how"], found["apart"]) == (how, True)


def test_the_first_factor_that_is_not_apart():
    found = pd.DataFrame(dict(factor=["species", "flock", "start"], apart=[True, False, False]))
    assert confounding.not_apart(found) == "flock" and confounding.not_apart(found[:1]) == ""
    assert confounding.not_apart(found[:0]) == ""


def test_the_log_of_a_batch_is_its_machines_of_its_season():
    rows = pd.DataFrame(dict(incubator=["A", "A", None, ""], season=[2024, 2025, 2025, 2025]))
    assert relation._log_of(rows).fillna("none").tolist() == ["A|2024", "A|2025", "none", ""]
    assert relation._log_of(rows[1:]).fillna("none").tolist() == ["A", "none", ""]
    assert relation._log_of(rows[["incubator"]]).fillna("none").tolist() == ["A", "A", "none", ""]


def test_the_log_is_turned_only_where_batches_share_a_machine(monkeypatch):
    start = pd.Timestamp("2025-03-01", tz="UTC")
    rows = pd.DataFrame(dict(batch=["a", "b", "c"], incubator=["A", "A", "B"], start=start,
                             end=start + pd.Timedelta(days=7)))  # fmt: skip
    monkeypatch.setattr(relation, "log_rates", lambda tracks: len(tracks))
    monkeypatch.setattr(relation, "turned_doses", lambda exposure, rates: rates)
    assert relation._turned(rows, dict(a=1, b=2, c=None)) == {"A": 2}
    assert relation._turned(rows, dict(a=None, b=2, c=3)) == {"A": 1, "B": 1}
    for tracks in (None, dict(c=None)):
        assert relation._turned(rows, tracks) is None
    apart = rows.assign(incubator=["A", "B", "C"])
    assert relation._turned(apart, dict(a=1)) is None


def test_a_window_without_a_clock_or_a_log_has_a_length_at_most():
    start = pd.Timestamp("2025-03-01", tz="UTC")
    assert _window_doses(None, pd.NaT, start) == _window_doses(None, start, pd.NaT) == {"share_logged": 0.0}
    found = _window_doses(None, start, start + pd.Timedelta(hours=36))
    assert found == dict(hours=36.0, hours_logged=0.0, share_logged=0.0)


def test_whole_batches_may_differ_more_than_their_rows():
    """Two windows of 20 at 0.2 and 0.4: gaps 2 and 1 half weighted, variances 3.2 and 4.8; the other batch gaps -1."""
    died, share = np.array([6.0, 9.0, 3.0]), np.array([0.2, 0.4, 0.2])
    found = _batch_dispersion(died, np.full(3, 20.0), share, np.array([1.0, 0.5, 1.0]), np.array([7, 7, 9]), 3)
    assert found == pytest.approx((2.5**2 / (3.2 + 2.4) + 1 / 3.2) / 3)


def test_doses_of_several_seasons_part_by_part(monkeypatch):
    """Each part's windows meet its own log; tracks are kept only where they are asked for, in five columns."""
    track = pd.DataFrame({name: [1.0] for name in [*exposure._OF_A_TRACK, "rh_pct"]})
    monkeypatch.setattr(exposure, "batch_tracks", lambda part, names: {name: part.tracks[name] for name in names})
    monkeypatch.setattr(
        exposure, "add_doses", lambda own, tracks: own.assign(dose=[tracks[name] is not None for name in own["batch"]])
    )
    parts = [
        SimpleNamespace(batches=pd.DataFrame(dict(batch=[3, 1])), tracks={"1": track, "3": None}, kept={"x": 1}),
        SimpleNamespace(batches=pd.DataFrame(dict(batch=[2, 9])), tracks={"2": track}, kept={"x": 1}),
    ]
    windows = pd.DataFrame(dict(batch=["1", "2", "3", "1"], name=list("abcd")), index=[5, 6, 7, 8])
    made = SimpleNamespace(parts=parts)
    for keep in (False, True):
        table, kept = exposure.doses_by_part(made, windows, keep_tracks=keep)
        assert table.index.tolist() == [5, 6, 7, 8] and table["dose"].tolist() == [True, True, False, True]
        assert sorted(kept) == (["1", "2", "3"] if keep else []) and parts[0].kept == parts[1].kept == {}
    assert list(kept["1"]) == exposure._OF_A_TRACK and kept["3"] is None
    table, _ = exposure.doses_by_part(made, windows[:0])
    assert len(table) == 0

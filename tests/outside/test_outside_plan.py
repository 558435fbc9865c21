"""The planner against exact distributions, published figures and an iCalendar reader from the registry."""

import icalendar
import numpy as np
import pandas as pd
import pytest
from scipy import stats

from hatchkit import reference
from hatchkit.advice import dates, ics
from hatchkit.say import plan as words
from hatchkit.usual import beta_binomial as predictive


def known(mu, rho):
    """The weights of a keeper of whom mean and spread are known: all of it at the nearest place of the grid."""
    weight = np.zeros((len(predictive.MU), len(predictive.RHO)))
    weight[np.abs(predictive.MU - mu).argmin(), np.abs(predictive.RHO - rho).argmin()] = 1.0
    return weight


@pytest.mark.parametrize(("rho", "eggs"), [(0.001, 31), (0.03, 33), (0.10, 37)])
def test_eggs_for_twenty_chicks_as_computed_with_scipy_and_vgam(rho, eggs):
    # Mean hatch 0.75 (the grid has 0.745 and 0.755), nine times in ten; rho 0.001 stands for the binomial. Quantiles
    # from scipy's binomial and beta-binomial, tail checked with VGAM.
    fewer, more = (predictive.eggs_learned(known(mu, rho), 20, sure=0.9) for mu in (0.756, 0.744))
    assert fewer <= eggs <= more <= fewer + 1


def test_chance_of_twenty_from_thirty_as_vgam_gives_it():
    assert stats.betabinom.sf(19, 30, *predictive.shapes(0.75, 0.03)) == pytest.approx(0.8229349174, abs=1e-9)
    lower, upper = (predictive.chance_learned(known(mu, 0.03), 20, 30) for mu in (0.744, 0.756))
    assert lower < 0.8229349174 < upper


def test_shapes_give_vgams_cumulative_probability():
    # P(X <= 5 | n = 48, a = 2, b = 30) = 0.8433651187 (VGAM pbetabinom.ab).
    mean, rho = 2 / 32, 1 / 33
    assert stats.betabinom.cdf(5, 48, *predictive.shapes(mean, rho)) == pytest.approx(0.8433651187, abs=1e-9)


@pytest.mark.parametrize("chicks", [1, 12, 100])
@pytest.mark.parametrize("rho", [0.001, 0.055, 0.22])
def test_the_answer_is_the_smallest_exact_quantile(chicks, rho):
    eggs = predictive.eggs_learned(known(0.805, rho), chicks, sure=0.8)
    size = (1 - rho) / rho

    def law(n):
        return stats.betabinom(n, 0.805 * size, 0.195 * size)

    assert law(eggs).sf(chicks - 1) >= 0.8 - 1e-12 > law(eggs - 1).sf(chicks - 1)


def test_with_many_batches_the_prediction_nears_the_known_law():
    rng = np.random.default_rng(11)
    size = (1 - 0.04) / 0.04
    totals = np.full(400, 48)
    counts = stats.betabinom.rvs(totals, 0.8 * size, 0.2 * size, random_state=rng)
    weight = predictive.learn(counts, totals, 0.6, 0.15)
    mean, _, _, rho = predictive.summary(weight)
    assert mean == pytest.approx(counts.sum() / totals.sum(), abs=0.01)
    assert rho == pytest.approx(0.04, abs=0.012)
    assert (
        abs(predictive.eggs_learned(weight, 30, sure=0.9) - predictive.eggs_learned(known(0.8, 0.04), 30, sure=0.9))
        <= 1
    )


def test_without_own_batches_the_middle_hatch_is_the_published_one():
    # Home incubation: 50 % poor, 70 % average, 85-90 % very good (breeder's guide).
    level = reference.load("hatch_levels").set_index("species").loc["chicken"]
    weight = predictive.learn([], [], level["share_of_set"], (level["high"] - level["low"]) / 2.56)
    over_mean = np.cumsum(weight.sum(axis=1))
    assert predictive.summary(weight)[0] == pytest.approx(0.70, abs=0.01)
    assert predictive.MU[np.searchsorted(over_mean, 0.1)] == pytest.approx(0.50, abs=0.03)
    assert predictive.MU[np.searchsorted(over_mean, 0.9)] == pytest.approx(0.875, abs=0.03)


# Days to hatch and to transfer from a second text beside the kit's main chart.
SECOND_TEXT = [
    ("chicken", 20, 21, "FAO, Small-scale poultry production: 20-21 days"),
    (
        "turkey",
        28,
        28.5,
        "Mississippi State incubation table: 28; late eggs still counted at 28.5 (turkey storage paper)",
    ),
    ("duck", 27.9, 28.3, "Bagliacca et al. 2005: 27.9-28.3 days by storage"),
    ("muscovy", 33, 37, "Extension copy 33-35; measured 33.5-35.2 (Bagliacca et al. 2005)"),
    ("goose", 28, 33, "Poultry producer table 28-33; first pip 695-699 h"),
    ("quail", 16, 18, "Poultry producer table 16-18; Nigerian study: day 18"),
    ("pheasant", 23, 26, "Extension copy 23-24; poultry producer table 24-26"),
    ("guinea", 26, 28, "Extension copy 26-28; Araujo et al. 2019: 28"),
    ("pigeon", 16, 19, "Poultry producer table 16-19"),
    ("bobwhite", 23, 23.5, "NC State Henderson County: 23 days"),
]


@pytest.mark.parametrize(("species", "low", "high", "source"), SECOND_TEXT)
def test_the_calendar_hatches_within_the_days_of_a_second_text(species, low, high, source):
    figures = reference.species(species)
    assert low - 0.01 <= dates.hatch_middle_days(figures, 3) <= high + 0.01, source


def test_the_calendar_follows_the_published_storage_line_of_ducks():
    # Bagliacca et al. 2005: hatch time = 27.82 + 0.0343 x days stored: 27.92, 28.06, 28.30 d at 3, 7, 14 days.
    duck = reference.species("duck")
    seven, fourteen = dates.hatch_middle_days(duck, 7), dates.hatch_middle_days(duck, 14)
    assert fourteen - seven == pytest.approx(28.30 - 28.06, abs=0.01)
    assert dates.hatch_middle_days(duck, 7) == pytest.approx(28.06, abs=0.1)


def test_transfer_of_chickens_leaves_the_last_three_days_unturned():
    # Virginia Tech: turning day 2-18, none in the last 3 days; Cartwright 2000: transfer day 18.
    table = dates.calendar(reference.species("chicken"), pd.Timestamp("2026-03-02 18:00", tz="UTC"))
    days = table.set_index("step")["day"]
    assert days["transfer"] == 18
    assert days["first_hatch"] < 21 < days["last_hatch"]


def in_words(table):
    rows = table.to_dict("records")
    return table.assign(what=[words.step(row, "en") for row in rows], why=[words.why(row, "en") for row in rows])


def test_a_reference_reader_reads_the_calendar_file_back():
    table = in_words(dates.calendar(reference.species("quail"), pd.Timestamp("2026-03-20 18:00", tz="Europe/Rome")))
    text = ics.calendar_text(table, title="Plan; with, odd\\ letters é", stamp=pd.Timestamp("2026-03-01", tz="UTC"))
    calendar = icalendar.Calendar.from_ical(text)
    events = list(calendar.walk("VEVENT"))
    assert calendar["version"] == "2.0" and calendar["prodid"]
    assert [str(event["summary"]) for event in events] == list(table["what"])
    assert [event.decoded("dtstart") for event in events] == [time.tz_convert("UTC") for time in table["starts"]]
    assert all(event.decoded("dtend") > event.decoded("dtstart") for event in events)
    assert len({str(event["uid"]) for event in events}) == len(events)
    assert all("Plan; with, odd\\ letters é" in str(event["description"]) for event in events)
    assert all(len(list(event.walk("VALARM"))) == 1 for event in events)


def test_lines_end_in_crlf_and_are_at_most_75_octets():
    table = in_words(dates.calendar(reference.species("duck"), pd.Timestamp("2026-03-20 18:00", tz="UTC")))
    text = ics.calendar_text(table, title="é" * 60, stamp=pd.Timestamp("2026-03-01", tz="UTC"))
    lines = text.split("\r\n")
    assert text.endswith("\r\n") and "\n" not in text.replace("\r\n", "")
    assert max(len(line.encode("utf-8")) for line in lines) <= 75

"""The simulator's defaults against published figures: deaths by day, a breakout ledger, heat, cold."""

import numpy as np
import pandas as pd
import pytest
from scipy import stats

from hatchkit import reference
from hatchkit.losses.proportions import interval
from hatchkit.simulate import biology, bookkeeping

HEN = reference.species_table().loc["chicken"]
FIGURES = biology.parameters()
# Jassim et al. 1996 Poult. Sci. 75:464-471: embryo deaths on days 1 to 21 (43 white Cornish embryos)
JASSIM = np.array([6, 5, 11, 2, 2, 3, 0, 0, 0, 0, 1, 0, 0, 0, 1, 0, 1, 5, 1, 4, 1])
# Butcher & Nilipour, UF/IFAS EDIS VM101: hatch-day breakout of heavy breeders, % of eggs set
LEDGER = {
    "hatched": 85.0,
    "culled": 1.25,
    "pipped": 1.25,
    "infertile": 4.5,
    "days 1-4": 2.5,
    "days 5-10": 1.25,
    "days 11-17": 1.25,
    "days 18-21": 2.5,
    "contaminated": 0.5,
}


def _climate(air=lambda age: np.where(age < 18, 37.5, 36.94)):
    age = np.arange(-0.5, 24, 1 / 48)
    return biology.egg_climate(air(age), np.where(age < 18, 59.0, 74.0), age_days=age, species=HEN, p=FIGURES)


@pytest.fixture(scope="module")
def eggs():
    """24,000 eggs of ordinary flocks in a steady machine, opened on hatch day without candling."""
    rng, climate, parts = np.random.default_rng(2001), _climate(), []
    logit = np.log(FIGURES["fertility"] / (1 - FIGURES["fertility"]))
    for _ in range(160):
        fertility = 1 / (1 + np.exp(-rng.normal(logit, FIGURES["fertility_sd"])))
        drawn = biology.draw_eggs(rng, count=150, species=HEN, climate=climate, p=FIGURES, fertility=fertility)
        seen = bookkeeping.candle(rng, drawn, look_days={}, species=HEN, p=FIGURES)
        parts.append(drawn.join(seen.drop(columns="egg")))
    return pd.concat(parts, ignore_index=True)


def _by_day(died):
    return np.bincount(np.clip(np.ceil(died.dropna()), 1, 21).astype(int), minlength=22)[1:]


def _published_by_day():
    """Kuurman et al. 2001: 77 % with mean 2.6 and SD 3.3 d, 23 % with mean 17.4 and SD 2.0 d, up to day 21."""

    def weibull(mean, sd):
        # the shape for which the Weibull has this ratio of SD to mean, then the scale for the mean
        shapes = np.linspace(0.4, 20, 200_000)
        ratio = stats.weibull_min.std(shapes[::400]) / stats.weibull_min.mean(shapes[::400])
        shape = np.interp(-sd / mean, -ratio, shapes[::400])
        return stats.weibull_min(shape, scale=mean / stats.weibull_min.mean(shape))

    first, second = weibull(2.6, 3.3), weibull(17.4, 2.0)
    days = np.arange(22)
    total = 0.77 * first.cdf(days) + 0.23 * second.cdf(days)
    return np.diff(total) / total[-1]


def _misfit_p(counts, shares, *, cuts):
    """Chance of a misfit at least this large (Pearson) if the shares were true; exact by 20,000 draws."""
    edges = [0, *cuts]
    seen, wanted = (np.add.reduceat(values, edges[:-1]) for values in (counts, shares))
    expected = wanted * seen.sum()
    drawn = np.random.default_rng(43).multinomial(seen.sum(), wanted, 20_000)
    misfit = ((seen - expected) ** 2 / expected).sum()
    return float((((drawn - expected) ** 2 / expected).sum(axis=1) >= misfit).mean())


def test_background_deaths_by_day_follow_the_published_two_phases(eggs):
    died = _by_day(eggs.loc[eggs["died_of"] == "background", "died_day"])
    fit = stats.chisquare(died, _published_by_day() * died.sum())
    assert died.sum() > 1900
    assert fit.pvalue > 0.05  # chi-square about 16 on 20 degrees of freedom


def test_background_deaths_are_8_6_percent_of_set_with_77_percent_in_the_first_phase(eggs):
    died = eggs.loc[eggs["died_of"] == "background", "died_day"]
    # batches differ (SD 0.3 of the log rate), so the share is known to about half a point only
    assert len(died) / len(eggs) == pytest.approx(0.086, abs=0.006)
    assert (died < 10.5).mean() == pytest.approx(0.77 * 0.966, abs=0.03)


def test_all_deaths_before_the_pip_fit_the_43_of_jassim_by_week_and_by_band(eggs):
    died = _by_day(eggs.loc[eggs["outcome"] != "pipped_dead", "died_day"])
    shares = died / died.sum()
    assert _misfit_p(JASSIM, shares, cuts=[7, 14, 21]) > 0.1  # measured 0.29
    assert _misfit_p(JASSIM, shares, cuts=[4, 10, 17, 21]) > 0.1  # measured 0.72


def test_day_by_day_the_published_shape_itself_fits_jassim_only_just(eggs):
    """Eleven deaths on day 3 and five on day 2 fit no smooth shape: stated, not tuned away."""
    days = list(range(1, 22))
    published = _misfit_p(JASSIM, _published_by_day(), cuts=days)
    died = _by_day(eggs.loc[eggs["outcome"] != "pipped_dead", "died_day"])
    simulated = _misfit_p(JASSIM, died / died.sum(), cuts=days)
    assert 0.01 < published < 0.10  # measured 0.04
    assert 0.005 < simulated < 0.10  # measured 0.02


def test_the_default_ledger_is_the_published_one_within_three_trays(eggs):
    """450 eggs are the sample that the trade opens (three trays of 150)."""
    day, outcome = eggs["died_day"], eggs["outcome"]
    dead = outcome == "dead"
    rotten = dead & eggs["rotten_day"].notna() & (eggs["died_of"] == "rotten")
    dead &= ~rotten
    lines = {
        "hatched": outcome == "hatched",
        "culled": outcome == "culled",
        "pipped": outcome == "pipped_dead",
        "infertile": outcome == "infertile",
        "days 1-4": dead & (day <= 4),
        "days 5-10": dead & (day > 4) & (day <= 10),
        "days 11-17": dead & (day > 10) & (day <= 17),
        "days 18-21": dead & (day > 17),
        "contaminated": rotten,
    }
    shares = {name: float(line.mean()) for name, line in lines.items()}
    assert sum(shares.values()) == pytest.approx(1)
    for name, percent in LEDGER.items():
        low, high = interval(round(shares[name] * 450), 450)
        assert low <= percent / 100 <= high, name
        assert abs(shares[name] * 100 - percent) < 0.4, name


def _heat_share(day, air_c, hours):
    """Share of embryos that a spell of hot air kills, by the rate alone."""
    climate = _climate(
        lambda age: np.where((age >= day) & (age < day + hours / 24), air_c, np.where(age < 18, 37.5, 36.94))
    )
    quiet = biology.heat_rate(_climate(), species=HEN, p=FIGURES).sum()
    return 1 - np.exp(quiet - biology.heat_rate(climate, species=HEN, p=FIGURES).sum())


@pytest.mark.parametrize(("day", "hours"), [(3, 12), (7, 4), (11, 7), (16, 7)])
def test_ande_and_wilson_1981_half_die_at_43_3_degrees(day, hours):
    assert 0.25 < _heat_share(day, 43.3, hours) < 0.6


def test_day_7_is_the_most_sensitive_age_as_in_ande_and_wilson():
    shares = {day: _heat_share(day, 43.3, 4) for day in (3, 7, 11, 16)}
    assert max(shares, key=shares.get) == 7


def test_thompson_1976_day_16():
    assert _heat_share(16, 40.6, 24) < 0.15  # no major effect
    assert _heat_share(16, 43.3, 6) < _heat_share(16, 43.3, 9)
    assert _heat_share(16, 46.1, 3) > 0.99  # all dead
    assert _heat_share(16, 48.9, 1) > 0.99  # all dead


def test_cold_day_17_embryos():
    """24 h at 21.2 C did no harm, 11.3 C did (Can. J. Anim. Sci., about 1970)."""

    def share(air_c):
        climate = _climate(lambda age: np.where((age >= 17) & (age < 18), air_c, np.where(age < 18, 37.5, 36.94)))
        rate = biology.cold_rate(climate, species=HEN, p=FIGURES | {"cool_rate": 0.0}).sum()
        return 1 - np.exp(-rate)

    assert share(21.2) < 0.02
    assert share(11.3) > 0.3

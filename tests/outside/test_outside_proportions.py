"""Intervals, dispersion and the predictive distribution against published and independently computed values."""

import pytest

from hatchkit.losses.bad_luck import adjusted
from hatchkit.losses.clears import true_infertile
from hatchkit.losses.predictive import distribution
from hatchkit.losses.proportions import dispersion, interval

# Crowder 1978 Appl. Stat. 27:34-37, Table 3: germinated seeds on 21 plates (y, n).
CROWDER_Y = [10, 23, 23, 26, 17, 5, 53, 55, 32, 46, 10, 8, 10, 8, 23, 0, 3, 22, 15, 32, 3]
CROWDER_N = [39, 62, 81, 51, 39, 6, 74, 72, 51, 79, 13, 16, 30, 28, 45, 4, 12, 41, 30, 51, 7]


@pytest.mark.parametrize(
    ("count", "total", "method", "low", "high"),
    [
        # Newcombe 1998 Stat. Med. 17:857-872, Table I: printed to four digits.
        (81, 263, "wilson", 0.2553, 0.3662),
        (81, 263, "clopper_pearson", 0.2527, 0.3676),
        (15, 148, "wilson", 0.0624, 0.1605),
        (15, 148, "clopper_pearson", 0.0578, 0.1617),
        (0, 20, "wilson", 0.0, 0.1611),
        (0, 20, "clopper_pearson", 0.0, 0.1684),
        (1, 29, "wilson", 0.0061, 0.1718),
        (1, 29, "clopper_pearson", 0.0009, 0.1776),
    ],
)
def test_intervals_agree_with_newcombe(count, total, method, low, high):
    assert interval(count, total, method) == pytest.approx((low, high), abs=5.1e-5)


@pytest.mark.parametrize(
    ("method", "low", "high", "tolerance"),
    [
        ("clopper_pearson", 0.01307924, 0.17195993, 1e-8),  # R binom.test
        ("jeffreys", 0.017916, 0.157483, 1e-6),
    ],
)  # statsmodels proportion_confint
def test_three_of_48_as_other_programs_have_it(method, low, high, tolerance):
    assert interval(3, 48, method) == pytest.approx((low, high), abs=tolerance)


@pytest.mark.parametrize(("count", "total"), [(0, 12), (3, 48), (150, 300), (12, 12)])
@pytest.mark.parametrize(
    ("method", "name"), [("wilson", "wilson"), ("clopper_pearson", "beta"), ("jeffreys", "jeffreys")]
)
def test_intervals_equal_a_reference_library(count, total, method, name):
    from statsmodels.stats.proportion import proportion_confint

    low, high = proportion_confint(count, total, method=name)
    if method == "jeffreys":
        low, high = (0.0 if count == 0 else low), (1.0 if count == total else high)
    assert interval(count, total, method) == pytest.approx((low, high), abs=1e-9)


def test_nine_pipped_of_450_gives_the_published_interval_only_with_clopper_pearson():
    # Hebbink, "What's the best sample size for egg break-out": 2 %, 95 % 0.9 to 3.8; of 1800 1.4 to 2.8.
    low, high = interval(9, 450, "clopper_pearson")
    assert (round(100 * low, 1), round(100 * high, 1)) == (0.9, 3.8)
    low, high = interval(36, 1800, "clopper_pearson")
    assert (round(100 * low, 1), round(100 * high, 1)) == (1.4, 2.8)
    assert round(100 * interval(9, 450)[0], 1) == 1.1


def test_no_early_dead_in_24_eggs_may_still_be_14_percent():
    assert interval(0, 24, "clopper_pearson")[1] == pytest.approx(0.1425, abs=5e-5)


def test_pearson_dispersion_equals_the_intercept_only_binomial_fit():
    import numpy as np
    import statsmodels.api as sm

    y, n = np.array(CROWDER_Y), np.array(CROWDER_N)
    fit = sm.GLM(np.column_stack([y, n - y]), np.ones(len(y)), family=sm.families.Binomial()).fit()
    assert dispersion(y, n) == pytest.approx(fit.pearson_chi2 / fit.df_resid, abs=1e-9)


def test_benjamini_hochberg_worked_example():
    # Benjamini & Hochberg 1995 J. R. Stat. Soc. B 57:289-300: 15 tests, 4 rejected at 5 %.
    p = [
        0.0001,
        0.0004,
        0.0019,
        0.0095,
        0.0201,
        0.0278,
        0.0298,
        0.0344,
        0.0459,
        0.3240,
        0.4262,
        0.5719,
        0.6528,
        0.7590,
        1.0,
    ]
    raised = adjusted(p)
    assert raised[3] == pytest.approx(0.035625, abs=1e-9)
    assert (raised <= 0.05).sum() == 4


def test_predictive_tail_of_one_known_beta_binomial():
    # R VGAM pbetabinom.ab: P(X <= 5), n 48, a 2, b 30. One point of the grid cannot be singled out, so the
    # distribution is rebuilt from its own formula through a level with a known spread.
    import numpy as np
    from scipy.integrate import quad
    from scipy.optimize import brentq
    from scipy.special import expit
    from scipy.stats import betabinom, norm

    from hatchkit.losses.predictive import LOGITS, SPREADS

    assert betabinom.cdf(5, 48, 2, 30) == pytest.approx(0.8433651187, abs=1e-9)
    weight = np.zeros((len(LOGITS), len(SPREADS)))
    weight[:, 6] = 1.0  # spread 0.6
    share = 2 / 32

    def moment(middle, power):
        return quad(lambda z: norm.pdf(z) * expit(middle + 0.6 * z) ** power, -9, 9)[0]

    # The beta with the mean and variance of a logit-normal share with sd 0.6, by adaptive quadrature.
    middle = brentq(lambda value: moment(value, 1) - share, -6, 0)
    size = share * (1 - share) / (moment(middle, 2) - share**2) - 1
    want = betabinom.cdf(5, 48, share * size, (1 - share) * size)
    assert distribution(48, weight.ravel() / weight.sum(), share=share)[:6].sum() == pytest.approx(want, abs=1e-5)


def test_double_sampling_of_clears():
    # Formula of Tenenbein 1970 J. Am. Stat. Assoc. 65:1350-1361: 300 set, 45 clear, 20 opened, 6 early dead.
    found = true_infertile(300, 45, 20, 6)
    assert found.share == pytest.approx(0.105, abs=1e-6)
    assert found.low < 0.105 - 0.0210832 and found.high > 0.105 + 0.0210832  # one standard error by his formula

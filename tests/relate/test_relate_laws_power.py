"""Seasons drawn anew and the harm they could show: moments, scores and ratios by hand, integrals and statsmodels."""

import math

import numpy as np
import pandas as pd
import pytest
import statsmodels.api as sm
from scipy import special, stats

from hatchkit.relate import bayes, power, redrawn
from hatchkit.relate.design import design
from hatchkit.relate.hazard import weigh_chance
from hatchkit.relate.verdict import rules


def table_of(batches=14, windows=2, *, exposed=5, eggs=36, seed=3, **more):
    """Batches with `windows` windows of 7 days; the first `exposed` met a dose of 1 or 2 in their second window."""
    rng = np.random.default_rng(seed)
    rows = [
        dict(batch=f"b{b:02d}", window=w, days=7.0, at_risk=float(eggs - 3 * w), died=float(rng.binomial(eggs, 0.08)),
             dose=(1.0 + b % 2) * (b < exposed and w == windows - 1))
        for b in range(batches) for w in range(windows)
    ]  # fmt: skip
    return pd.DataFrame(rows).assign(**more)


@pytest.mark.parametrize(("shown", "ratio"), [
    # 80 % at a ratio of 4 exactly; between 2 and 4 as the probits of 50 and 90 % lie about that of 80 %.
    ((0.2, 0.8, 0.95), 4.0), ((0.5, 0.9, 0.99), 2 * 2 ** (0.841621 / 1.281552)),
    # Seen at 2 already: on the line from 2.5 % at a ratio of 1.
    ((0.9, 0.95, 0.99), 2 ** ((0.841621 + 1.959964) / (1.281552 + 1.959964))),
    ((0.8, 0.95, 0.99), 2.0),
    # Beyond 10: the line from 4 to 10 goes on, up to a ratio of 30; one that does not rise leads nowhere.
    ((0.1, 0.3, 0.7), 10 * math.exp(0.317221 * math.log(2.5) / 1.048801)), ((0.1, 0.3, 0.5), math.inf),
    ((0.3, 0.3, 0.3), math.inf), ((0.2, 0.3, 0.3), math.inf)
])  # fmt: skip
def test_the_ratio_that_would_be_seen_by_hand(shown, ratio):
    found = power.ratio_for(np.array([2.0, 4, 10]), np.array(shown), 0.8, 250)
    assert found == pytest.approx(ratio, rel=1e-5)


@pytest.mark.parametrize(("ratio", "told"), [(29.0, True), (31.0, False)])
def test_no_ratio_beyond_thirty_is_told(ratio, told):
    """The power at 10 that puts 80 % at this ratio, on the line from 30 % at 4."""
    ahead = math.log(ratio / 10)
    z = (special.ndtri(0.8) * math.log(2.5) + ahead * special.ndtri(0.3)) / (math.log(2.5) + ahead)
    found = power.ratio_for(np.array([2.0, 4, 10]), np.array([0.1, 0.3, stats.norm.cdf(z)]), 0.8, 250)
    assert found == (pytest.approx(ratio) if told else math.inf)


def test_none_and_all_of_the_seasons_count_as_half_a_season():
    """0 of 250 is taken as 0.2 %, all as 99.8 %: z 2.878 either way."""
    z = special.ndtri(0.998)
    found = power.ratio_for(np.array([2.0, 4, 10]), np.array([0.0, 1.0, 1.0]), 0.8, 250)
    assert found == pytest.approx(2 * 2 ** ((special.ndtri(0.8) + z) / (2 * z)))


def test_simulated_seasons_have_the_stated_mean_and_spread():
    """Deaths of 36 eggs at a hazard of 0.08 x ratio^dose x a batch's own factor (log-normal, mean 1)."""
    made = design(table_of())
    share = np.full(len(made.rows), 1 - math.exp(-0.08))
    ratios = np.repeat([1.0, 3.0], 6000)
    died = power.simulated_deaths(made, share, 0.5, ratios, np.random.default_rng(1))
    size = made.dose / made.step
    normal, weight = np.polynomial.hermite_e.hermegauss(41)
    weight = weight / weight.sum()
    for ratio, part in ((1.0, died[:6000]), (3.0, died[6000:])):
        for row in (0, 1, len(size) - 1):
            chance = -np.expm1(-0.08 * ratio ** size[row] * np.exp(0.5 * normal - 0.125))
            mean, eggs = weight @ chance, made.at_risk[row]
            variance = eggs * mean * (1 - mean) + eggs * (eggs - 1) * (weight @ chance**2 - mean**2)
            assert part[:, row].mean() == pytest.approx(eggs * mean, abs=5 * math.sqrt(variance / 6000))
            assert part[:, row].var() == pytest.approx(variance, rel=0.12)
    assert np.corrcoef(died[:6000, 0], died[:6000, 1])[0, 1] > 0.15  # windows of one batch share its factor
    assert abs(np.corrcoef(died[:6000, 0], died[:6000, 2])[0, 1]) < 0.06


@pytest.mark.parametrize("spread", [0.4, 1.0])
def test_a_clear_sign_of_simulated_seasons_is_that_of_statsmodels_and_a_plain_count(spread):
    made = design(table_of(20, 1, exposed=6, eggs=40))
    share, _, dealt, _ = weigh_chance(made, draws=300)
    died = power.simulated_deaths(made, share, spread, np.repeat([1.0, 2.5, 5.0], 40), np.random.default_rng(2))
    found, want = power._clear(made, died, dealt), []
    doses = np.array([dealt[i] for i in range(len(dealt))])[:, :, 0]
    for season in died:
        pooled = season.sum() / made.at_risk.sum()
        variance = made.at_risk * pooled * (1 - pooled)
        gap = season - made.at_risk * pooled
        rho = np.clip(((gap**2 / variance).sum() - 19) / (made.at_risk - 1).sum(), 0, 0.9)
        score = doses @ (gap / np.sqrt(variance * (1 + (made.at_risk - 1) * rho)))
        rare = np.mean(score >= score[0] - 1e-9) <= 0.05
        family = sm.families.Binomial(link=sm.families.links.CLogLog())
        columns = np.column_stack([made.dose / made.step, np.ones(20)])
        fit = sm.GLM(np.column_stack([season, made.at_risk - season]), columns, family=family).fit()
        phi = max(1.0, fit.pearson_chi2 / 18)
        want.append(rare and fit.params[0] > stats.t.ppf(0.95, 18) * fit.bse[0] * math.sqrt(phi))
    assert 20 < sum(want) < 100 and (found != np.array(want)).sum() == 0


def test_power_needs_twenty_arrangements_and_plans_with_a_spread_of_two_fifths():
    made = design(table_of(10, 1, exposed=3, eggs=40))
    share, _, dealt, _ = weigh_chance(made)
    kept = [dealt[i] for i in range(20)]
    enough, few = (power.power(made, share, 0.1, np.array(kept[:n]), seasons=60) for n in (20, 19))
    assert few["power"].tolist() == [0, 0, 0] and np.isinf(few["detectable"]) and enough["power"][2] > 0
    assert enough["spread"] == few["spread"] == rules()["planning_spread"] == 0.4
    assert power.power(made, share, 0.6, np.array(kept), seasons=20)["spread"] == 0.6
    assert power.power(made, share, np.nan, np.array(kept), seasons=20)["spread"] == 0.4
    assert enough["ratios"].tolist() == [2, 4, 10] and (np.diff(enough["power"]) >= 0).all()
    assert enough["doubling"] == enough["power"][0]


def test_batches_drawn_anew_have_the_stated_moments():
    """Half of a batch's own variance is shared by its windows, a batch of one window has it whole."""
    eggs, share, batch = np.full(3, 60.0), np.full(3, 1 - math.exp(-0.1)), np.array([0, 0, 1])
    spread = np.full((20_000, 1), 0.6)
    died = redrawn.deaths(eggs, share, batch, spread, np.random.default_rng(4))
    hazard = 0.1 * np.exp(0.6 * np.random.default_rng(5).standard_normal(400_000) - 0.18)
    chance = -np.expm1(-hazard)
    variance = 60 * chance.mean() * (1 - chance.mean()) + 60 * 59 * chance.var()
    for row in range(3):
        assert died[:, row].mean() == pytest.approx(60 * chance.mean(), rel=0.02)
        assert died[:, row].var() == pytest.approx(variance, rel=0.06)
    one, two, both = np.random.default_rng(6).standard_normal((3, 400_000)) * 0.6 * math.sqrt(0.5)
    together = np.cov(-np.expm1(-0.1 * np.exp(both + one - 0.18)), -np.expm1(-0.1 * np.exp(both + two - 0.18)))
    assert np.cov(died[:, 0], died[:, 1])[0, 1] == pytest.approx(3600 * together[0, 1], rel=0.15)
    assert abs(np.corrcoef(died[:, 0], died[:, 2])[0, 1]) < 0.03


def test_what_columns_leave_of_a_dose_is_the_residual_of_statsmodels():
    rng = np.random.default_rng(7)
    dose, weight = rng.uniform(0, 3, 30), rng.uniform(0.5, 4, 30)
    columns = np.column_stack([np.ones(30), rng.normal(size=30)])
    assert redrawn.projected(dose, columns, weight) == pytest.approx(sm.WLS(dose, columns, weights=weight).fit().resid)


def test_spreads_are_weighed_by_likelihood_and_the_stated_prior():
    """Each batch's effect summed over a normal; prior log-normal about 0.4 by 0.5; the mean hazard stays."""
    died, eggs = np.array([2.0, 9, 5, 1]), np.array([40.0, 38, 41, 40])
    share, batch = np.full(4, 0.1), np.arange(4)
    grid = np.array([0.1, 0.2, 0.3, 0.4, 0.5, 0.65, 0.8, 1.0, 1.3])
    normal = np.linspace(-8, 8, 4001)
    log = []
    for spread in grid:
        chance = -np.expm1(np.log1p(-0.1) * np.exp(spread * normal - spread**2 / 2))
        each = [stats.norm.pdf(normal) @ stats.binom.pmf(d, n, chance) for d, n in zip(died, eggs, strict=True)]
        log.append(np.log(each).sum() - 0.5 * (np.log(spread / 0.4) / 0.5) ** 2)
    assert redrawn.spread_weights(died, eggs, share, batch) == pytest.approx(special.softmax(log), abs=1e-3)


def test_how_rare_redrawn_seasons_are_is_found_again_by_another_draw():
    """One window, no machines: the residual's sum with the centred dose over the root of all deaths."""
    for seed in (3, 8):
        made = design(table_of(14, 1, exposed=4, seed=seed))
        found = redrawn.redrawn(made, draws=4000)
        pooled = made.died.sum() / made.at_risk.sum()
        # All batches have 36 eggs and one level: what is left of the dose is its distance from the mean.
        dose = made.dose - made.dose.mean()
        weight = redrawn.spread_weights(made.died, made.at_risk, np.full(14, pooled), np.arange(14))
        spread = np.random.default_rng(9).choice(redrawn.SPREADS, 20_000, p=weight)[:, None]
        effect = np.random.default_rng(10).standard_normal((20_000, 14)) * spread - spread**2 / 2
        again = np.random.default_rng(11).binomial(36, -np.expm1(np.log1p(-pooled) * np.exp(effect)))
        score = (again - 36 * pooled) @ dose / np.sqrt(again.sum(axis=1))
        seen = (made.died - 36 * pooled) @ dose / math.sqrt(made.died.sum())
        assert found["more"] == pytest.approx(np.mean(score > seen) + np.mean(score == seen) / 2, abs=0.03)
        assert found["spread"] == pytest.approx(weight @ redrawn.SPREADS, abs=1e-3) and found["draws"] == 4000


def test_what_could_be_foreseen_is_found_again_by_another_draw():
    made = design(table_of(16, 1, exposed=5))
    found = redrawn.foresee(made, seasons=3000)
    pooled = made.died.sum() / made.at_risk.sum()
    size = made.dose / made.step
    weight = redrawn.spread_weights(made.died, made.at_risk, np.full(16, pooled), np.arange(16))
    rng = np.random.default_rng(12)

    def scores(ratio):
        spread = rng.choice(redrawn.SPREADS, 8000, p=weight)[:, None]
        effect = rng.standard_normal((8000, 16)) * spread - spread**2 / 2
        again = rng.binomial(36, -np.expm1(np.log1p(-pooled) * ratio**size * np.exp(effect)))
        return (again - 36 * pooled) @ (size - size.mean()) / np.sqrt(again.sum(axis=1))

    limit = np.quantile(scores(1.0), 1 - 0.048)
    shown = [np.mean(scores(ratio) > limit) for ratio in (2.0, 4.0, 10.0)]
    assert found["power"] == pytest.approx(shown, abs=0.05) and found["doubling"] == found["power"][0]
    assert found["detectable"] == pytest.approx(power.ratio_for(found["ratios"], found["power"], 0.8, 3000))
    assert found["left"] == pytest.approx(1)  # one window and no levels beside its own


@pytest.mark.parametrize(("exposed", "batches", "left", "dead", "why"), [
    (5, 14, 0.249, 99, "levels"), (3, 14, 0.25, 99, "few_exposed"), (4, 14, 0.25, 41.9, "few_deaths"),
    (4, 14, 0.25, 42, "few_batches"),
])  # fmt: skip
def test_what_records_lack_most(exposed, batches, left, dead, why):
    assert redrawn._lacking(design(table_of(batches, 1, exposed=exposed)), left, dead) == why


def test_a_drift_through_the_season_is_taken_out_from_twelve_batches_on():
    """Days since the first batch of its season, the same in all windows of a batch, with mean 0 and deviation 1."""
    days = np.repeat(np.arange(12) * 9.0, 2)
    start = pd.Timestamp("2024-03-01") + pd.to_timedelta(days + np.tile([0, 7], 12), unit="D")
    made = design(table_of(12).assign(start=start))
    drift = redrawn._drift(made)
    assert drift[:, 0] == pytest.approx((days - days.mean()) / days.std())
    columns = redrawn.nuisance(made)
    assert columns.shape == (24, 3) and np.linalg.matrix_rank(columns) == 3
    assert redrawn._drift(design(table_of(11).assign(start=start[:22]))) is None
    assert redrawn._drift(design(table_of(12))) is None
    season = np.repeat([2023] * 6 + [2024] * 6, 2)
    within = redrawn._drift(design(table_of(12).assign(start=start, season=season)))[:, 0]
    assert within[:12] == pytest.approx(within[12:])
    hole = pd.Series(start)
    hole[3] = pd.NaT
    assert redrawn._drift(design(table_of(12).assign(start=hole))) is None


def test_levels_of_machines_and_seasons_of_each_keeper():
    rows = table_of(8, 1, exposed=3).assign(incubator=list("aabbaabb"), keeper=list("xxxxyyyy"), season=[1, 2] * 4)
    columns = redrawn.nuisance(design(rows))
    # One level, three more machines of keepers, and of the four keeper-seasons two that are new beside these.
    assert np.linalg.matrix_rank(columns) == columns.shape[1]
    labels = (rows["keeper"] + rows["incubator"]).to_numpy(), (rows["keeper"] + rows["season"].astype(str)).to_numpy()
    whole = np.hstack([np.eye(4)[np.unique(one, return_inverse=True)[1]] for one in labels])
    assert columns.shape[1] == np.linalg.matrix_rank(whole) == np.linalg.matrix_rank(np.hstack([columns, whole]))


def test_points_of_the_spread_have_equal_prior_chance():
    assert bayes._spread_grid(4) == pytest.approx(stats.halfnorm.ppf([0.125, 0.375, 0.625, 0.875]))


def test_weighted_quantiles_and_draws_by_hand():
    """Weights 0.2, 0.5, 0.3 in the order of values: middles at 0.1, 0.45 and 0.85 of the whole."""
    post = bayes.Posterior(np.array([[3.0], [1], [2]]), np.array([0.3, 0.1, 0.2]), np.array([0.3, 0.2, 0.5]))
    found = post.quantile(post.coef[:, 0], [0.05, 0.1, 0.275, 0.45, 0.65, 0.85, 0.9])
    assert found == pytest.approx([1, 1, 1.5, 2, 2.5, 3, 3])
    coef, spread = post.resample(4000, np.random.default_rng(1))
    assert np.mean(coef[:, 0] == 2) == pytest.approx(0.5, abs=0.03) and (spread == coef[:, 0] / 10).all()


@pytest.mark.parametrize("shared", [False, True])
def test_a_posterior_by_plain_sums(shared):
    """Level and ratio on a grid, spread half-normal(1) summed at its points, batch effects by Gauss and Hermite."""
    died, eggs = np.array([1.0, 3, 0, 6, 2, 8]), np.array([30.0, 28, 30, 29, 31, 30])
    group = np.array([0, 0, 1, 1, 2, 2]) if shared else np.arange(6)
    columns = np.column_stack([np.array([0, 0, 0, 1, 0, 2.0]), np.ones(6)])
    offset = np.log(7.0)
    post = bayes.posterior(died, eggs, columns, offset=offset, group=group, prior_mean=[0.0, -4.0],
                           prior_width=[1.5, 1.2], draws=24_000)  # fmt: skip
    slope, level = np.meshgrid(np.linspace(-2.5, 4, 66), np.linspace(-7.5, -1, 66), indexing="ij")
    node, weight = np.polynomial.hermite_e.hermegauss(60)
    whole = np.zeros(slope.shape)
    for spread in stats.halfnorm.ppf((np.arange(12) + 0.5) / 12):
        like = np.ones(slope.shape)
        for one in np.unique(group):
            inside = np.zeros(slope.shape)
            for u, part in zip(spread * node, weight / weight.sum(), strict=True):
                product = part
                for row in np.flatnonzero(group == one):
                    hazard = np.exp(level + slope * columns[row, 0] + offset + u)
                    product = product * (-np.expm1(-hazard)) ** died[row] * np.exp(-hazard * (eggs[row] - died[row]))
                inside += product
            like *= inside
        whole += like
    whole *= stats.norm.pdf(slope, 0, 1.5) * stats.norm.pdf(level, -4, 1.2)
    whole /= whole.sum()
    for place, value in ((0, slope), (1, level)):
        mean, drawn = (whole * value).sum(), post.coef[:, place]
        assert post.weight @ drawn == pytest.approx(mean, abs=0.03)
        sd = math.sqrt((whole * (value - mean) ** 2).sum())
        assert math.sqrt(post.weight @ (drawn - post.weight @ drawn) ** 2) == pytest.approx(sd, rel=0.04)
    assert len(post.coef) == 24_000 and 1 / (post.weight**2).sum() > 3000

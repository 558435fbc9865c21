"""The course of a batch and the weight of causes, worked again the long way: loops, numeric slopes and scipy."""

from itertools import combinations

import numpy as np
import pytest
from scipy import optimize, special

from hatchkit import reference
from hatchkit.advice import cause_weights, course, harm
from hatchkit.advice.evidence_climate import NOTHING, Doses
from hatchkit.advice.published import STAGES
from hatchkit.advice.seen import Seen
from hatchkit.losses.two_phase_shape import cumulative
from hatchkit.usual.stages import Usual

#: Clear, removed, 21 days, pipped, culled; band of each (days 0-2, 3-6, 7-9, 10-13, 14-17, 18-20), stage of each band.
BAND = [0, 1, 2, 2, 2, 3, 3, 3, 3, 4, 4, 4, 5, 5, 5, 5, 6, 6, 6, 6, 7, 7, 7, 8, 9]
STAGE = [0, 1, 2, 2, 3, 3, 4, 4, 5, 6]
SHOWS = np.array([0.05, 0.25, 0.6, 0.9, 1, 1, 1])
LOSSES = np.array([0.10, 0.011, 0.067, 0.03, 0.074, 0.027, 0.034])
LOGITS = np.log(LOSSES / (1 - LOSSES))
SPREAD = np.array([0.5, 0.6, 0.4, 0.55, 0.45, 0.7, 0.3])


def test_the_days_of_death_are_the_published_ones_with_two_fifths_of_the_late_at_term():
    mass = np.diff(cumulative(np.arange(22.0)))
    found = course._published_days()
    for first, last, part in ((0, 7, 1.0), (7, 14, 1.0), (14, 21, 0.6)):
        want = part * mass[first:last] / mass[first:last].sum()
        want[-1] += 1 - part
        assert found[first:last] == pytest.approx(want)


@pytest.mark.parametrize(("clears", "hides_all"), [(0.40, True), (0.10, False), (0.01, False), (0.001, False)])
def test_hazards_of_an_ordinary_batch_by_hand(clears, hides_all):
    """-log(1 - share) at each stage; early deaths are scaled so that those that show are as many as is usual."""
    losses = np.array([clears, *LOSSES[1:]])
    total = -np.log(1 - losses)
    days = course._published_days()
    found = course.ordinary_hazards(np.log(losses / (1 - losses)))
    early = found[2:9]
    assert early @ SHOWS == pytest.approx(total[2])
    hidden = early @ (1 - SHOWS)
    plain = days[:7] * total[2] / (days[:7] @ SHOWS)
    assert (plain @ (1 - SHOWS) <= 0.4 * total[0]) == hides_all
    if hides_all:
        assert early == pytest.approx(plain)
    else:  # the four days on which any are hidden are taken down alike until just two fifths of the clears are embryos
        assert hidden == pytest.approx(0.4 * total[0])
        assert np.ptp(early[:4] / days[:4]) == pytest.approx(0) and np.ptp(early[4:] / days[4:7]) == pytest.approx(0)
        assert early[0] / days[0] < early[4] / days[4]
    assert found[[0, 1, 23, 24]] == pytest.approx([total[0] - hidden, total[1], total[5], total[6]])
    assert found[9:16] == pytest.approx(total[3] * days[7:14]) and found[16:23] == pytest.approx(total[4] * days[14:])


def cover_by_hand(spread):
    """Spread squared on the diagonal; 0.6 of it inside a stage; deaths (early to pipped) share 0.04 besides."""
    out = np.zeros((10, 10))
    for i in range(10):
        for j in range(10):
            if i == j:
                out[i, j] = spread[STAGE[i]] ** 2
            else:
                inside = 0.6 * spread[STAGE[i]] * spread[STAGE[j]] if STAGE[i] == STAGE[j] else 0.0
                out[i, j] = inside + (0.04 if 2 <= min(i, j) and max(i, j) <= 8 else 0.0)
    return out


def test_covariance_of_the_bands_by_hand():
    assert list(course.BAND_OF) == BAND and list(course.STAGE_OF_BAND) == STAGE
    assert np.linalg.inv(course.precision(SPREAD)) == pytest.approx(cover_by_hand(SPREAD))


def test_a_cause_brings_the_looseness_of_its_shape():
    """Share s of a cause in a band: sd of its log 1 / root(4 s), at most 1.2; sizes add 0.25 in all its bands."""
    base = course.ordinary_hazards(LOGITS)
    added = np.zeros((2, 25))
    added[0, 2:5], added[0, 9:12], added[1, 23] = 0.1, 0.02, 0.5
    part, loose = course.loosened(base, added)
    mass = np.array([[added[h, np.array(BAND) == band].sum() for band in range(10)] for h in range(2)])
    usual = np.array([base[np.array(BAND) == band].sum() for band in range(10)])
    share = mass / mass.sum(axis=1, keepdims=True)
    assert part == pytest.approx(mass / (mass + usual))
    want = [[min(1 / np.sqrt(4 * s), 1.2) if s > 0 else 1.2 for s in row] for row in share]
    assert loose == pytest.approx(np.array(want)) and loose[1, 8] == pytest.approx(0.5)
    cover = np.linalg.inv(course.precision(SPREAD, part, loose))
    for h in range(2):
        plain = cover_by_hand(SPREAD) * np.outer(1 - part[h], 1 - part[h])
        plain += np.diag((part[h] * loose[h]) ** 2 + 0.001) + 0.0625 * np.outer(part[h], part[h])
        assert cover[h] == pytest.approx(plain)


def cells_by_hand(hazards):
    """Each hazard strikes what the ones before it left."""
    left, out = 1.0, []
    for hazard in hazards:
        out.append(left * (1 - np.exp(-hazard)))
        left *= np.exp(-hazard)
    return np.array([*out, left])


def marginal_by_hand(ways, eggs, hazards, inverse):
    """Largest likelihood times prior by scipy, slopes by differences, one egg in a hundred under a wrong heading."""

    def logs(factor):
        cells = cells_by_hand(hazards * np.exp(factor)[BAND])
        return np.log(0.99 * ways @ cells + 0.01 / len(ways))

    best = optimize.minimize(lambda x: -eggs @ logs(x) + x @ inverse @ x / 2, np.zeros(10), tol=1e-10).x
    eye = 1e-5 * np.eye(10)
    slope = np.array([(logs(best + step) - logs(best - step)) / 2e-5 for step in eye])
    bend = (slope * eggs) @ slope.T
    log = eggs @ logs(best) - best @ inverse @ best / 2
    log += (np.linalg.slogdet(inverse)[1] - np.linalg.slogdet(bend + inverse)[1]) / 2
    each = ways * cells_by_hand(hazards * np.exp(best)[BAND])
    return log, eggs[:, None] * each / each.sum(axis=1, keepdims=True)


#: Clears (with early dead that look clear), dead of days 0 to 6, of 7 to 20 with pips, culled or removed, chicks.
WAYS = np.zeros((5, 26))
WAYS[0, 0], WAYS[0, 2:9] = 1, 1 - SHOWS
WAYS[1, 2:9] = SHOWS
WAYS[2, 9:24] = 1
WAYS[3, [1, 24]] = 1
WAYS[4, 25] = 1
EGGS = np.array([9.0, 4.0, 8.0, 3.0, 16.0])
STAGES_OF = np.tile([2, 7, *[3] * 7, *[4] * 7, *[5] * 7, 6, 1, 0], (5, 1))


@pytest.mark.parametrize("size", [0.0, 0.6])
def test_the_likelihood_of_what_was_seen_is_found_again_by_scipy(size):
    hazards = course.ordinary_hazards(LOGITS)
    hazards[14:20] += size / 6
    inverse = course.precision(SPREAD)
    log, cells = course.log_marginal(WAYS, EGGS, hazards[None], inverse)
    want, eggs = marginal_by_hand(WAYS, EGGS, hazards, inverse)
    assert log[0] == pytest.approx(want, abs=2e-5) and cells[0] == pytest.approx(eggs, abs=2e-3)
    assert cells[0].sum(axis=1) == pytest.approx(EGGS)


def test_deaths_follow_a_dose_by_the_exponential_law():
    """A dose at 0.3 of its day; of the harm 10 % dies at term, 7 % in the pip, 5 % is culled, 78 % by delay."""
    by_day = np.zeros(21)
    by_day[4], by_day[19] = 1.0, 0.5
    found = harm.from_dose(by_day, 1.8)
    want = np.zeros(25)
    for day, size in ((4, 1.0), (19, 0.5)):
        for cell in range(21):
            begin, end = max(cell - day - 0.3, 0), max(cell + 1 - day - 0.3, 0)
            gone = np.exp(-begin / 1.8) - (np.exp(-end / 1.8) if cell < 20 else 0)
            want[2 + cell] += 0.78 * size * np.log(2) * gone
        want[[22, 23, 24]] += np.array([0.10, 0.07, 0.05]) * size * np.log(2)
    assert found == pytest.approx(want)
    assert harm.by_stage(found) == pytest.approx(
        [0, want[24], 0, want[2:9].sum(), want[9:16].sum(), want[16:23].sum(), want[23], 0] / want.sum()
    )


def test_published_shapes_are_spread_evenly_over_their_bands():
    table = reference.load("cause_patterns").set_index(["cause", "variant"])
    ends = dict(clear=(0, 1), removed=(1, 2), days_0_2=(2, 4), days_2_7=(4, 9), days_7_14=(9, 16),
                days_14_18=(16, 20), days_18_21=(20, 23), pipped_dead=(23, 24), culled=(24, 25))  # fmt: skip
    for key, (kernel, _) in harm.patterns().items():
        row = table.loc[key, list(ends)].astype(float)
        for name, (first, last) in ends.items():
            assert kernel[first:last] == pytest.approx(row[name] / row.sum() / (last - first))


@pytest.mark.parametrize("logged", [1.0, 0.6])
def test_ways_of_a_measured_and_an_unmeasured_cause(logged):
    """Half a day of lost cold hours; what the log cannot have missed is left a fiftieth of what it did not see."""
    cold = np.zeros(21)
    cold[9], heat = 12.0, np.zeros(21)
    heat[3] = 0.0199  # below a fiftieth: no event
    ways = harm.ways(Doses(heat, cold, logged))
    own = [way for way in ways if way.cause == "cold_spell"]
    unseen = 0.02 * max(1 - logged, 0.02)
    nodes = np.array([-1.6, -1.0, -0.5, 0.0, 0.5, 1.0, 1.6])
    normal = np.exp(-(nodes**2) / 2) / np.exp(-(nodes**2) / 2).sum()
    for way, delay in zip(own[:3], (0.4, 1.8, 4.5), strict=True):
        assert way.measured and way.kernel == pytest.approx(harm.from_dose(cold / 24, delay))
        assert way.sizes == pytest.approx(np.exp(1.2 * nodes))
        harms = way.sizes * 0.5 * np.log(2) >= 0.05
        assert np.exp(way.log_chance) == pytest.approx((1 - unseen) / 3 * np.where(harms, normal, 1e-9))
    sizes, chance = [0.12, 0.3, 0.6, 1.0, 1.7], np.array([0.15, 0.25, 0.25, 0.2, 0.15])
    assert [way.variant for way in own[3:]] == ["early", "mid", "late"]
    for way in own[3:]:
        assert way.sizes == pytest.approx(sizes) and np.exp(way.log_chance) == pytest.approx(unseen / 3 * chance)
    warm = [way for way in ways if way.cause == "heat_spell"]
    assert len(warm) == 3 and not any(way.measured for way in warm)
    assert np.exp(warm[0].log_chance) == pytest.approx(chance / 3)


def test_from_which_dose_on_heat_and_cold_are_events():
    for heat, cold, measured in ((0.02, 0.0, 1), (0.0199, 0.03 * 24, 1), (0.02, 0.03 * 24, 2), (0.0199, 0.7, 0)):
        doses = Doses(np.r_[heat, np.zeros(20)], np.r_[cold, np.zeros(20)], 1.0)
        assert len({way.cause for way in harm.ways(doses) if way.measured}) == measured
    hot = [way for way in harm.ways(Doses(np.r_[1.0, np.zeros(20)], np.zeros(21), 1.0)) if way.measured]
    assert hot[0].sizes == pytest.approx(np.exp([-1.6, -1, -0.5, 0, 0.5, 1, 1.6]))


def test_no_dose_counts_for_more_than_four_halvings_and_smaller_ones_as_they_are():
    for hours, halvings in ((96, 4.0), (95, 95 / 24), (200, 4.0)):
        assert harm.halvings("cold_spell", Doses(np.zeros(21), np.r_[hours, np.zeros(20)], 1)).sum() == pytest.approx(
            halvings
        )
    assert not harm.halvings("turning", NOTHING).any()


def test_priors_share_what_luck_and_the_unlisted_leave_by_commonness():
    table = reference.load("causes").set_index("cause")["commonness"].astype(float).drop(["bad_luck", "unlisted"])
    found = cause_weights.priors()
    assert found["bad_luck"] == 0.3 and found["unlisted"] == 0.015
    for cause, common in table.items():
        assert found[cause] == pytest.approx(0.685 * common / table.sum())


def test_large_factors_of_a_pattern_are_held_down_on_both_sides():
    assert cause_weights.trusted(np.array([-10, -6, -1, 0, 5.9, 6.0, 7.0, 16.0])) == pytest.approx(
        [-8.4, -6, -1, 0, 5.9, 6.0, 6.6, 12.0]
    )
    assert cause_weights.log_sum(np.array([1000.0, 1000 + np.log(3)])) == pytest.approx(1000 + np.log(4))


def test_the_weight_of_every_cause_and_pair_by_hand():
    """Sums of chances instead of logs: the mean factor over ways and sizes times evidence and prior, for all."""
    what = Seen(WAYS, EGGS, STAGES_OF)
    usual = Usual(np.full(8, 0.125), LOGITS, SPREAD, 0.05, 5, 200, 0.9)
    evidence = {"turning": 0.7, "infertile": -0.4}
    found = cause_weights.weigh(what, usual, NOTHING, evidence)
    base, prior = course.ordinary_hazards(LOGITS), cause_weights.priors()

    def factor(added):
        tight = course.precision(SPREAD, *course.loosened(base, added[None]))
        log, cells = course.log_marginal(WAYS, EGGS, (base + added)[None], tight)
        return log[0], cells[0]

    luck = factor(np.zeros(25))[0]
    wide = course.log_marginal(WAYS, EGGS, base[None], course.precision(np.maximum(SPREAD, 1.5)))[0][0]
    single, best, lost = {}, {}, {}
    for way in harm.ways(NOTHING):
        part = np.exp(way.log_chance).sum()
        each = [factor(size * way.kernel) for size in way.sizes]
        chance = np.exp(way.log_chance) * np.exp([log - luck for log, _ in each])
        held = float(cause_weights.trusted(np.log(chance.sum() / part)))
        assert found.ways[way.cause][way.variant] == pytest.approx((part, held))
        put = [
            (cells * np.append(size * way.kernel / (base + size * way.kernel), 0))
            for size, (_, cells) in zip(way.sizes, each, strict=True)
        ]
        eggs = sum(c * p for c, p in zip(chance / chance.sum(), put, strict=True))
        single.setdefault(way.cause, []).append(part * np.exp(held))
        lost.setdefault(way.cause, []).append(eggs)
        if single[way.cause][-1] == max(single[way.cause]):
            best[way.cause] = way
    weight = {name: sum(one) * np.exp(evidence.get(name, 0)) * prior[name] for name, one in single.items()}
    order = sorted(weight, key=weight.get, reverse=True)
    never = [{"too_dry", "too_humid"}, {"warm_throughout", "cool_throughout"}]
    pairs = {}
    for a, b in combinations(order, 2):
        if order.index(a) < 3 and {a, b} not in never:
            logs = [
                factor(best[a].sizes[i] * best[a].kernel + best[b].sizes[j] * best[b].kernel)[0]
                for i in (1, 3)
                for j in (1, 3)
            ]
            held = float(cause_weights.trusted(special.logsumexp(logs) - np.log(4) - luck))
            odds = np.exp(evidence.get(a, 0) + evidence.get(b, 0)) * prior[a] * prior[b] / prior["bad_luck"]
            pairs[a, b] = np.exp(held) * 0.15 * odds
    luckless = np.exp(cause_weights.trusted(wide - luck)) * prior["unlisted"]
    total = sum(weight.values()) + sum(pairs.values()) + luckless + prior["bad_luck"]
    assert found.alone == pytest.approx(
        {name: w / total for name, w in weight.items()}
        | {"bad_luck": prior["bad_luck"] / total, "unlisted": luckless / total}
    )
    assert {frozenset((row["first"], row["second"])): row["share"] for row in found.pairs} == pytest.approx(
        {frozenset(pair): w / total for pair, w in pairs.items()}
    )
    shares = [row["share"] for row in found.pairs]
    assert shares == sorted(shares, reverse=True)
    assert all(row["eggs_first"] >= row["eggs_second"] for row in found.pairs)
    for name, rows in lost.items():
        mean = sum(w * eggs for w, eggs in zip(single[name], rows, strict=True)) / sum(single[name])
        want = [mean[STAGES_OF == stage].sum() for stage in range(len(STAGES))]
        assert found.lost[name] == pytest.approx(want, abs=1e-9)
        assert found.kernels[name] == pytest.approx(best[name].kernel)

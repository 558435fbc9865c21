"""Faults of `mutations.py --named`: each survived when it was first tried by hand, and has a test of its own now."""

#: Faults that survived when they were first tried by hand: name -> (file, text, text instead).
NAMED = {
    "95 % range made 90 %": ("losses/predictive.py", "tail = (1 - level) / 2", "tail = 1 - level"),
    "level of the clear-sign floor halved (weighted)": (
        "relate/effect.py",
        'stdtrit(df, 1 - rules()["clear_chance"])',
        'stdtrit(df, 1 - rules()["clear_chance"] / 2)',
    ),
    "level of the clear-sign floor halved (Bayes)": (
        "relate/effect.py",
        '[tail, limit["clear_chance"], 0.5',
        '[tail, limit["clear_chance"] / 2, 0.5',
    ),
    "chicks lost pass exposed windows unharmed": (
        "relate/excess.py",
        "spared *= 1 - share",
        "spared *= 1 if design.exposed[row] else 1 - share",
    ),
    "covariate budget doubled (deaths)": ("relate/design.py", "deaths // 10", "deaths // 5"),
    "covariate budget doubled (batches)": (
        "relate/design.py",
        "max(batches - 2, 0) // 5",
        "2 * max(batches - 2, 0) // 5",
    ),
    "n for n - 1 in the Williams weight": (
        "relate/effect.py",
        "weight = 1 / (1 + (at_risk - 1) * k",
        "weight = 1 / (1 + at_risk * k",
    ),
    "n for n - 1 in the Williams moment": (
        "relate/effect.py",
        "expected * (at_risk - 1) * share",
        "expected * at_risk * share",
    ),
    "least band of the clock 6 h": ("climate/clock.py", "max(half, 8.0)", "max(half, 6.0)"),
    "JOIN_HOURS doubled": ("climate/excursions.py", "JOIN_HOURS = 0.5", "JOIN_HOURS = 1.0"),
    "window of the egg's extreme 0 h": ("climate/excursions.py", "EGG_EXTREME_H = 2.0", "EGG_EXTREME_H = 0.0"),
    "boundary of the rolling dose": (
        "climate/dose.py",
        'clock_h - ROLLING_H, side="right"',
        'clock_h - ROLLING_H, side="left"',
    ),
    "no discount for eggs of one batch being alike": (
        "usual/beta_binomial.py",
        "size = (1 - rho) / rho\n",
        "size = 1e9 + 0 * rho\n",
    ),
    "width of the prior 3.92": ("advice/plan.py", "/ 2.56)", "/ 3.92)"),
    "storage below 3 days shortens the hatch": (
        "advice/dates.py",
        "max(stored_days - FRESH_DAYS, 0.0)",
        "(stored_days - FRESH_DAYS)",
    ),
    "the plan's 90 % made 95 %": ("advice/plan.py", "*, sure=0.9, set_at", "*, sure=0.95, set_at"),
}

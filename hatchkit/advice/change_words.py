"""Sentences for the changes that a plan proposes: what, now, to, why, how sure."""

from __future__ import annotations

HUMIDITY = "Humidity until transfer"


def against_cause(cause, shown, eggs, share, where, machine, target) -> dict:
    """The action against one cause, on this machine."""
    on = f" (incubator {machine})" if cause["side"] in ("machine", "hatch") and isinstance(machine, str) else ""
    batches = f"batch{'es' if len(where) > 1 else ''} {', '.join(where)}"
    sure = "very likely" if share >= 0.8 else "probable" if share >= 0.5 else "one of several that fit"
    return _change(
        f"{cause['name']}{on}",
        shown or "the pattern of the losses",
        " ".join(part for part in (cause["check_next"], target) if part),
        f"About {eggs:.0f} eggs of {batches} are put down to it.",
        f"{sure} ({share:.0%})",
        ("cause", dict(cause=cause.name, machine=machine if on else None, eggs=eggs, where=where, share=share)),
    )


def wanted_temperature(wanted, machine) -> str:
    """The temperature to hold on this machine."""
    return f"Hold {wanted:.1f} °C{f' in incubator {machine}' if isinstance(machine, str) else ''}."


def humidity_range(species, where) -> str:
    """The humidity to hold in the setter or hatcher."""
    low, high = (species[f"{where}_rh_{side}_pct"] for side in ("low", "high"))
    when = "until transfer" if where == "setter" else "while hatching"
    return f"Hold {low:.0f} to {high:.0f} % RH {when}."


def storage_days(species) -> str:
    """How long eggs may be kept."""
    return f"At most {species['storage_best_days']:.0f} days."


def _change(what, now, to, why, how_sure, said) -> dict:
    """A change in English, and as a code with its facts for other languages (``changed_<code>``)."""
    return dict(what=what, now=now, to=to, why=why, how_sure=how_sure, said=said)


def no_log() -> dict:
    """No temperature was logged at all."""
    return _change(
        "Log the temperature",
        "no readings",
        "a logging thermometer at egg height",
        "Without a log no loss can be set against heat or cold.",
        "certain: nothing was kept",
        ("no_log", {}),
    )


def probe_off(row) -> dict:
    """The hatching hours say that the probe reads wrongly."""
    bias = row["clock_bias_c"]
    side = "high, so the eggs were cooler than it says" if bias > 0 else "low, so the eggs were warmer than it says"
    return _change(
        f"Check the probe of incubator {row['incubator']} (beside a clinical thermometer near 37.5 °C)",
        f"reads about {abs(bias):.1f} K {side}",
        f"if the check agrees, {'+' if bias < 0 else '-'}{abs(bias):.1f} K as probe_offset_c in the settings "
        "(season.toml, in °C), and the setting of the machine moved to match",
        f"The hatching hours of {row['clock_batches']} batch{'es' if row['clock_batches'] != 1 else ''} point to it "
        "after storage and logged "
        "temperature are allowed for.",
        "fairly sure of the side, not of the size; check before you change",
        (
            "probe_off",
            dict(
                machine=row["incubator"],
                way="high" if bias > 0 else "low",
                off=round(abs(bias), 1),
                batches=row["clock_batches"],
                right=37.5,
            ),
        ),
    )


def probe_unchecked(row) -> dict:
    """Nobody ever checked this probe."""
    return _change(
        f"Check the probe of incubator {row['incubator']}",
        "no check on record",
        "read it beside a clinical thermometer near 37.5 °C (99.5 °F); in ice water only if it may get wet, and what "
        "it is off there need not hold at 37.5 °C; write what it is off into the settings (season.toml, line "
        "probe_offset_c)",
        "Every word on temperature holds only as far as the probe reads true.",
        "certain: no check is kept",
        ("probe_unchecked", dict(machine=row["incubator"])),
    )


def temperature(row, wanted) -> dict:
    """The machine's everyday mean is off."""
    gap = row["mean_c"] - wanted
    return _change(
        f"Setting of incubator {row['incubator']}",
        f"{row['mean_c']:.1f} °C on average",
        f"{wanted:.1f} °C",
        f"It ran {abs(gap):.1f} K {'above' if gap > 0 else 'below'} the table's figure outside excursions.",
        "sure of the log; see the probe's check",
        (
            "temperature",
            dict(
                machine=row["incubator"],
                wanted=wanted,
                off=abs(gap),
                way="high" if gap > 0 else "low",
                mean=row["mean_c"],
            ),
        ),
    )


def humidity(now, to, table) -> dict:
    """Another humidity is needed for the wanted water loss."""
    loss = table["projected_share"].median()
    return _change(
        HUMIDITY,
        f"{now:.0f} % RH",
        f"{to:.0f} % RH",
        f"The eggs were on the way to lose {100 * loss:.1f} % by transfer; "
        f"{100 * table['target_low'].iloc[0]:.0f} to "
        f"{100 * table['target_high'].iloc[0]:.0f} % is wanted. Go there in two sets if it is far.",
        f"from the weights of {len(table)} batch{'es' if len(table) > 1 else ''}; a humidity probe "
        "may be off by 3 points",
        (
            "humidity",
            dict(to=to, now=now, loss=loss, low=table["target_low"].iloc[0], high=table["target_high"].iloc[0]),
        ),
    )


def storage(over, known, longest, best) -> dict:
    """Eggs were kept too long."""
    return _change(
        "Set sooner after laying",
        f"{over} of {known} batches kept longer than {best:.0f} days (longest {longest:.0f})",
        f"at most {best:.0f} days",
        "Hatch falls with longer storage, and hatches come late.",
        "well known; how much it costs your eggs is not",
        ("storage", dict(best=best, over=over, known=known, longest=longest)),
    )


def candling(day, times) -> dict:
    """A look that would have told before from after."""
    return _change(
        f"Candle about day {day:.0f} when something went wrong before it",
        "no look between excursion and next candling",
        "a look two days after any excursion",
        f"{times} time{'s' if times > 1 else ''} this season deaths before an excursion could not be "
        "told from deaths after it.",
        "sure that it would have told; not that it would have changed the verdict",
        ("candling", dict(day=day, times=times)),
    )


def record(need, lacking, asked) -> dict:
    """A record that was missing."""
    return _change(
        f"Write down: {need}",
        "not kept for your one batch" if asked == 1 else f"missing in {lacking} of the last {asked} batches",
        "keep it for every batch",
        "It would weigh much in naming a cause.",
        "certain: it was not there",
        ("record", dict(need=need, lacking=lacking, asked=asked)),
    )

"""All logs of a season: whose they are, corrected, merged, with what was assumed."""

import numpy as np
import pandas as pd
import pytest

from hatchkit.records.logs.season import read_all

START = pd.Timestamp("2026-04-13 22:30")


def read_logs(folder, settings, batches, timezone):
    logs = read_all(folder, settings, batches, timezone)
    return logs.readings, logs.problems


def write(
    folder, name, *, start=START, count=50, temp=37.5, header="Time;Temp (°C);RH (%)", stamp="%Y-%m-%d %H:%M", seed=0
):
    """A log with a reading every ten minutes; the same seed gives the same readings at the same times."""
    path = folder / "sensors" / name
    path.parent.mkdir(parents=True, exist_ok=True)
    times = pd.date_range(start, periods=count, freq="10min")
    noise = [np.random.default_rng([seed, int(time.timestamp())]).normal(0, 0.2) for time in times]
    lines = [f"{t:{stamp}};{temp + e:.2f};{52 + 5 * e:.1f}" for t, e in zip(times, noise, strict=True)]
    path.write_text("\n".join([header, *lines, ""]), encoding="utf-8")
    return times


def batches(*incubators, start="2026-04-13"):
    return pd.DataFrame(
        {
            "batch": [str(n) for n in range(len(incubators))],
            "incubator": list(incubators),
            "set_at": pd.to_datetime([start] * len(incubators), utc=True),
            "taken_off_at": pd.to_datetime([start] * len(incubators), utc=True) + pd.Timedelta(days=22),
        }
    )


@pytest.mark.parametrize(
    ("file", "name"),
    [
        ("a.csv", "A"),
        ("incubator_a.csv", "A"),
        ("Incubator A.csv", "A"),
        ("Machine A log.csv", "A"),
        ("logA.txt", "A"),
        ("a_april.csv", "A"),
        ("2026-04 big one.csv", "Big One"),
        ("bigone.csv", "Big One"),
        ("BIG-ONE_log.TSV", "Big One"),
    ],
)
def test_the_file_name_tells_the_incubator(tmp_path, file, name):
    write(tmp_path, file)
    readings, problems = read_logs(tmp_path, {}, batches("A", "B", "Big One"), "UTC")
    assert readings["incubator"].unique().tolist() == [name]
    assert [facts["machine"] for facts in problems.loc[problems["code"] == "log_machine_named", "facts"]].count(
        name
    ) == 1


def test_season_toml_goes_before_the_file_name(tmp_path):
    write(tmp_path, "a.csv")
    settings = {"incubators": {"B": {"files": ["sensors/a*.csv"]}}}
    readings, problems = read_logs(tmp_path, settings, batches("A", "B"), "UTC")
    assert readings["incubator"].unique().tolist() == ["B"]
    assert not problems["code"].str.startswith("log_machine").any()


def test_probes_of_one_file_go_to_their_incubators(tmp_path):
    write(tmp_path, "both.csv", header="Time;Probe 1 (°C);Probe 2 (°C)")
    settings = {"incubators": {"A": {"probes": ["probe 1"]}, "B": {"probes": ["Probe 2"]}}}
    readings, _ = read_logs(tmp_path, settings, batches("A", "B"), "UTC")
    assert readings.groupby("probe")["incubator"].first().to_dict() == {"Probe 1": "A", "Probe 2": "B"}


def test_probes_called_like_the_incubators_need_no_settings(tmp_path):
    write(tmp_path, "all.csv", header="Time;Incubator A (°C);Incubator B (°C)")
    readings, _ = read_logs(tmp_path, {}, batches("A", "B"), "UTC")
    assert readings.groupby("probe")["incubator"].first().tolist() == ["A", "B"]


def test_a_log_that_nothing_claims_is_kept_and_the_line_that_mends_it_is_given(tmp_path):
    write(tmp_path, "export17.csv")
    write(tmp_path, "a.csv")
    readings, problems = read_logs(tmp_path, {}, batches("A", "B"), "UTC")
    assert sorted(readings["incubator"].unique()) == ["A", "export17"]
    assert problems["fix"].str.contains('[incubators.A] files = ["sensors/export17.csv"]', regex=False).sum() == 1


def test_the_only_log_of_the_only_incubator_is_its_own(tmp_path):
    write(tmp_path, "export17.csv")
    readings, problems = read_logs(tmp_path, {}, batches("Old box"), "UTC")
    assert readings["incubator"].unique().tolist() == ["Old box"]
    assert [facts["how"] for facts in problems.loc[problems["code"] == "log_machine_guessed", "facts"]] == ["only_one"]


def test_the_probe_offset_is_added_and_the_logged_value_kept(tmp_path):
    write(tmp_path, "a.csv")
    readings, _ = read_logs(tmp_path, {"incubators": {"A": {"probe_offset_c": -0.3}}}, batches("A"), "UTC")
    np.testing.assert_allclose(readings["temp_c"], readings["temp_logged_c"] - 0.3)
    assert abs(readings["temp_logged_c"].mean() - 37.5) < 0.2


def test_an_export_that_starts_again_from_the_beginning_is_merged(tmp_path):
    write(tmp_path, "a_1.csv", count=50)
    write(tmp_path, "a_2.csv", count=80)
    readings, problems = read_logs(tmp_path, {}, batches("A"), "UTC")
    assert len(readings) == 80 and not readings["time"].duplicated().any()
    assert [facts["count"] for facts in problems.loc[problems["code"] == "log_again", "facts"]] == [50]


def test_two_loggers_in_one_incubator_stay_two_probes(tmp_path):
    write(tmp_path, "a_top.csv", seed=1)
    write(tmp_path, "a_low.csv", seed=2, temp=36.9)
    readings, problems = read_logs(tmp_path, {}, batches("A"), "UTC")
    assert len(readings) == 100 and sorted(readings["probe"].unique()) == ["Temp", "Temp (a_top)"]
    assert problems["code"].eq("log_two_probes").sum() == 1


def test_the_next_month_of_the_same_logger_is_the_same_probe(tmp_path):
    write(tmp_path, "a_april.csv")
    write(tmp_path, "a_may.csv", start=pd.Timestamp("2026-05-01"))
    readings, _ = read_logs(tmp_path, {}, batches("A"), "UTC")
    assert readings["probe"].unique().tolist() == ["Temp"] and readings["time"].is_monotonic_increasing


def test_overlapping_files_that_contradict_each_other_are_marked(tmp_path):
    write(tmp_path, "a_1.csv")
    write(tmp_path, "a_2.csv", count=80)
    path = tmp_path / "sensors" / "a_2.csv"
    text = path.read_text().splitlines()
    text[11] = text[11].split(";")[0] + ";39.99;50.0"
    path.write_text("\n".join(text))
    readings, problems = read_logs(tmp_path, {}, batches("A"), "UTC")
    assert (readings["doubt"] == "repeated").sum() == 2 and len(readings) == 81
    assert [facts["count"] for facts in problems.loc[problems["code"] == "log_clash", "facts"]] == [1]


def test_day_or_month_first_is_settled_by_the_batches(tmp_path):
    # 4 May or 5 April: a single day, both readings are continuous.
    write(tmp_path, "a.csv", start=pd.Timestamp("2026-05-04 00:00"), stamp="%d/%m/%Y %H:%M")
    for start, month in (("2026-05-01", 5), ("2026-04-01", 4)):
        readings, problems = read_logs(tmp_path, {}, batches("A", start=start), "UTC")
        assert set(readings["time"].dt.month) == {month}
        assert [facts["how"] for facts in problems.loc[problems["code"] == "log_order_open", "facts"]] == ["batches"]


def test_day_or_month_first_as_season_toml_says(tmp_path):
    write(tmp_path, "a.csv", start=pd.Timestamp("2026-05-04 00:00"), stamp="%d/%m/%Y %H:%M")
    settings = {"sensors": {"day_first": False}}
    readings, problems = read_logs(tmp_path, settings, batches("A", start="2026-05-01"), "UTC")
    assert set(readings["time"].dt.month) == {4}
    assert [facts["how"] for facts in problems.loc[problems["code"] == "log_order", "facts"]] == ["said"]


def test_bad_files_are_reported_and_the_rest_is_read(tmp_path):
    write(tmp_path, "a.csv")
    sensors = tmp_path / "sensors"
    (sensors / "noise.csv").write_bytes(bytes(range(256)) * 300)
    (sensors / "log.xlsx").write_bytes(b"PK\x03\x04")
    (sensors / "folder.csv").mkdir()
    (sensors / "letter.txt").write_text("Dear all,\nthe eggs are in.\n")
    readings, problems = read_logs(tmp_path, {}, batches("A"), "UTC")
    assert len(readings) == 50
    lost = problems[problems["severity"] == "lost"]
    assert sorted(lost["file"]) == ["sensors/folder.csv", "sensors/letter.txt", "sensors/log.xlsx", "sensors/noise.csv"]
    assert (lost["fix"] != "").all()


def test_a_season_without_logs_has_an_empty_table(tmp_path):
    readings, problems = read_logs(tmp_path, {}, batches("A"), "UTC")
    assert readings.empty and problems.empty
    assert str(readings["time"].dtype) == "datetime64[us, UTC]"


def test_the_unit_of_an_incubator_holds_for_its_files(tmp_path):
    write(tmp_path, "a.csv", temp=55.0, header="Time;Temp;RH")
    readings, _ = read_logs(tmp_path, {"incubators": {"A": {"temp_unit": "F"}}}, batches("A"), "UTC")
    assert abs(readings["temp_c"].mean() - 12.8) < 0.2


def test_a_wet_bulb_is_read_for_the_altitude_and_the_air_of_its_incubator(tmp_path):
    write(tmp_path, "a.csv", header="Time;Dry bulb °C;Wet bulb °C")
    path = tmp_path / "sensors" / "a.csv"
    text = path.read_text(encoding="utf-8").replace(";52", ";29").replace(";51", ";28").replace(";53", ";29")
    path.write_text(text, encoding="utf-8")
    found = {}
    for name, said in {"sea": {}, "hill": {"altitude_m": 1500}, "still": {"air": "still"}}.items():
        readings, problems = read_logs(tmp_path, {"incubators": {"A": said}}, batches("A"), "UTC")
        found[name] = readings["rh_pct"].mean()
        [facts] = problems.loc[problems["code"] == "log_humidity_wet_bulb", "facts"]
        assert facts["air"] == ("still" if name == "still" else "fan")
        assert facts["pressure"] == (84.6 if name == "hill" else 101.3)
    # e = e_s(wet) - A P (dry - wet): a lower pressure takes off less, the wick in still air more.
    assert found["hill"] > found["sea"] + 0.5 and found["still"] < found["sea"] - 0.5

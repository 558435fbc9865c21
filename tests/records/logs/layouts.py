"""Logs as loggers, phones, boards, databases and spreadsheets write them: one truth, many layouts.

Each layout takes times (naive, to the minute), temperatures in °C (one decimal) and humidities (whole per cent) and
gives the bytes of a file. All layouts are of our own making, after what public descriptions say of such exports.
"""

from __future__ import annotations

import datetime as dt
import io
import json
import zipfile

import openpyxl

LAYOUTS: dict = {}
#: Layouts whose columns or order of dates nothing names: the reading is a doubt with a question.
ASKED: set = set()


def layout(suffix=".csv", asked=False):
    def put(write):
        name = write.__name__.strip("_").replace("_", " ")
        LAYOUTS[name] = (suffix, write)
        if asked:
            ASKED.add(name)
        return write

    return put


def rows(readings, form, head=""):
    """Head and one formatted line a reading; {t} time, {c} °C, {f} °F, {h} humidity, {n} number, {s} Unix seconds."""
    out = [head] if head else []
    for n, (t, c, h) in enumerate(readings, 1):
        out.append(
            form.format(t=t, c=c, f=c * 1.8 + 32, h=h, n=n, s=int(t.replace(tzinfo=dt.UTC).timestamp()), k=c + 273.15)
        )
    return "\n".join(out) + "\n"


@layout()
def database_stamp_last(r):
    return rows(r, "{n},{c:.1f},{h},{t:%Y-%m-%d %H:%M:%S}", "id,temperature,humidity,created_at")


@layout()
def two_step_heading_with_units_in_brackets(r):
    return rows(
        r,
        "{t:%d/%m/%Y},{t:%H:%M:%S},{h},{c:.1f}",
        "Date,Time,Humidity,Temperature\n,,,\n(dd/mm/yyyy),(hh:mm:ss),(%),(C)",
    )


@layout()
def row_numbers_without_a_heading(r):
    return rows(r, '"{n}",{t:%Y-%m-%d %H:%M},{c:.1f},{h}', '"time","temp_c","rh"')


@layout()
def hour_column_beside(r):
    return rows(r, "{t:%Y-%m-%d %H:%M},{t.hour},{c:.1f},{h}", "time,hr,temp,rh")


@layout()
def weather_network(r):
    return rows(r, "XYZ1,{t:%Y-%m-%d %H:%M},{f:.2f},50.00,{h},0.00", "station,valid,tmpf,dwpf,relh,p01i")


@layout()
def many_other_columns(r):
    return rows(
        r,
        "{t:%Y-%m-%d %H:%M},46.07,13.1,0,1,37.5,{c:.1f},{h},1013.2",
        "time,latitude,battery V,UV,time zone,set temp,temperature,humidity,pressure hPa",
    )


@layout()
def depth_and_temperature(r):
    return rows(r, "{t:%m/%d/%Y %H:%M},1.5,{f:.2f}", 'Date,"Sensor Depth, feet","Temperature, F"')


@layout()
def derived_columns(r):
    return rows(
        r,
        "{t:%Y-%m-%d %H:%M:%S},{c:.1f},{h},20.1,41.0,1.2",
        "Timestamp,Temperature(℃),Humidity(%),DPT(℃),Feels Like,VPD",
    )


@layout()
def mean_lowest_highest(r):
    return rows(
        r,
        "{t:%d/%m/%Y %H:%M};{c:.1f};35.0;40.0;{h};20;90".replace(".1f}", ".1f}"),
        "Data e ora;Temp. media (°C);Temp. mínima (°C);Temp. máxima (°C);Umid. media (%);Umid. min (%);Umid. max (%)",
    )


@layout()
def lowest_mean_highest_in_two_lines(r):
    return rows(
        r, "{t:%Y-%m-%d %H:%M},35.0,{c:.1f},40.0,20,{h},90", ",Temperature,,,Humidity,,\nTime,Min,Avg,Max,Min,Avg,Max"
    )


@layout(".dat")
def four_lines_of_heading(r):
    return rows(
        r,
        '"{t:%Y-%m-%d %H:%M:%S}",{n},13.1,{c:.1f},{h}',
        '"A5","Hall","X1","12","","prog","4","Tab"\n"TIMESTAMP","RECORD","BattV_Min","AirTC_Avg","RH"\n'
        '"TS","RN","Volts","Deg C","%"\n"","","Min","Avg","Smp"',
    )


@layout(".jsonl")
def json_lines(r):
    return "".join(
        json.dumps({"ts": f"{t:%Y-%m-%dT%H:%M:%SZ}", "temperature": c, "humidity": h, "battery": 2.9}) + "\n"
        for t, c, h in r
    )


@layout(".json")
def json_document(r):
    return json.dumps(
        {
            "device": "box 3",
            "unit": "C",
            "data": [
                {"time": int(t.replace(tzinfo=dt.UTC).timestamp()), "values": {"temp": c, "hum": h}} for t, c, h in r
            ],
        },
        indent=1,
    )


@layout(".json")
def json_columns(r):
    return json.dumps(
        {
            "hourly": {
                "time": [f"{t:%Y-%m-%dT%H:%M}" for t, _, _ in r],
                "temperature_c": [c for _, c, _ in r],
                "relative_humidity": [h for _, _, h in r],
            }
        }
    )


@layout(".xlsx")
def workbook(r):
    return _book([("Log", [["Logger 7"], [], ["Time", "Temp (°C)", "RH (%)"], *([t, c, h] for t, c, h in r)])])


@layout(".xlsx")
def workbook_with_day_and_time_apart(r):
    return _book(
        [
            ("Info", [["Model", "7"], ["Owner", "nobody"]]),
            (
                "Data",
                [
                    ["Date", "Time", "Temp (°F)", "RH (%)"],
                    *([t.date(), t.time(), round(c * 1.8 + 32, 2), h] for t, c, h in r),
                ],
            ),
        ]
    )


def _book(sheets):
    book = openpyxl.Workbook()
    book.remove(book.active)
    for name, lines in sheets:
        sheet = book.create_sheet(name)
        for line in lines:
            sheet.append(line)
    out = io.BytesIO()
    book.save(out)
    return out.getvalue()


@layout(".zip")
def zipped(r):
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as archive:
        archive.writestr(
            "export/readings.csv", rows(r, "{t:%Y-%m-%d %H:%M},{c:.1f},{h}", "time,temperature (°C),humidity (%)")
        )
    return out.getvalue()


@layout(".txt")
def labelled_lines(r):
    return rows(r, "{t:%Y-%m-%d %H:%M:%S} Temperature: {c:.1f} Humidity: {h}")


@layout(".log")
def labelled_lines_with_units_and_arrows(r):
    return rows(r, "[{t:%d.%m.%Y, %H:%M:%S}] -> Humidity: {h}.00 %\tTemperature: {c:.1f} *C\tHeat index: 52.10 *C")


@layout(".log")
def labelled_with_equals(r):
    return rows(r, "{t:%Y-%m-%dT%H:%M:%S} temp={c:.1f}C hum={h}% vbat=3.71")


@layout()
def home_automation_entities(r):
    out = ["entity_id,state,last_changed"]
    for t, c, h in r:
        out += [
            f"sensor.box_temperature,{c},{t:%Y-%m-%dT%H:%M:%S}.000Z",
            f"sensor.box_humidity,{h},{t:%Y-%m-%dT%H:%M:%S}.000Z",
            f"sensor.box_battery,{90},{t:%Y-%m-%dT%H:%M:%S}.000Z",
        ]
    return "\n".join(out) + "\n"


@layout()
def one_quantity_a_line_with_units(r):
    out = ["time;device;measurement;value;unit"]
    for t, c, h in r:
        out += [
            f"{t:%d.%m.%Y %H:%M};box;Temperatur;{c:.1f};°C".replace(".", ",").replace(",", ".", 2),
            f"{t:%d.%m.%Y %H:%M};box;Luftfeuchte;{h};%",
            f"{t:%d.%m.%Y %H:%M};box;Batterie;3,1;V",
        ]
    return "\n".join(out) + "\n"


@layout()
def annotations_above(r):
    return rows(
        r,
        ",,0,{t:%Y-%m-%dT%H:%M:%SZ},{c:.1f},{h}",
        "#datatype,string,long,dateTime:RFC3339,double,double\n#group,false,false,false,false,false\n"
        "#default,_result,,,,\n,result,table,_time,temperature,humidity",
    )


@layout()
def channel_fields(r):
    return rows(r, "{t:%Y-%m-%d %H:%M:%S} UTC,{n},{c:.1f},{h}", "created_at,entry_id,field1,field2")


ASKED.add("channel fields")


@layout()
def unix_milliseconds(r):
    return rows(r, "{s}000,{c:.1f},{h}", "timestamp_ms,temperature,humidity")


@layout()
def time_with_dots(r):
    return rows(
        r, "{t:%d.%m.%Y};{t:%H.%M.%S};{c:.1f};{h}".replace(".1f", ".1f"), "Datum;Uhrzeit;Temperatur °C;Feuchte %"
    )


@layout()
def time_with_one_dot(r):
    return rows(r, "{t:%d.%m.%Y};{t:%H.%M};{c:.1f};{h}", "Datum;Uhrzeit;Temperatur °C;Feuchte %")


@layout()
def stamp_with_underscore(r):
    return rows(r, "{t:%Y%m%d_%H%M%S},{c:.1f},{h}", "stamp,temp,hum")


@layout()
def clock_before_date(r):
    return rows(r, "{t:%H:%M:%S} {t:%d/%b/%Y},{c:.1f},{h}", "time,temp,hum")


@layout()
def dots_and_month_name(r):
    return rows(r, "{t:%d.%b.%Y},{t:%H:%M:%S},{c:.1f},{h}", "date,time,temp,hum")


@layout(".txt")
def six_columns(r):
    return rows(
        r, "{t.year} {t.month:2} {t.day:2} {t.hour:2} {t.minute:2}  0 {c:.1f} {h}", "year mo dy hr mi se temp rh"
    )


@layout(".txt")
def year_month_day_and_hhmm(r):
    return rows(r, "{t.year}\t{t.month}\t{t.day}\t{t:%H%M}\t{c:.1f}\t{h}", "YEAR\tMONTH\tDAY\tTIME\tTEMP\tRH")


@layout(".txt")
def date_above_only(r):
    return f"Box 2 log\nDate: {r[0][0]:%Y-%m-%d}\n" + rows(r, "{t:%H:%M};{c:.1f};{h}", "Time;Temp C;RH")


@layout()
def quarters_of_months_in_french(r):
    return rows(r, "{t:%d/%m/%Y};{t.hour}h{t:%M};{c:.1f};{h}", "Date;Heure;Température (°C);Humidité relative (%)")


@layout()
def czech(r):
    return rows(r, "{t.day}.{t.month}.{t.year} {t:%H:%M};{c:.1f};{h}", "Datum a čas;Teplota °C;Vlhkost %").encode(
        "cp1250"
    )


@layout()
def hungarian(r):
    return rows(r, "{t:%Y.%m.%d.};{t:%H:%M};{c:.1f};{h}", "Dátum;Idő;Hőmérséklet (°C);Páratartalom (%)")


@layout()
def polish(r):
    return rows(r, "{t:%d.%m.%Y %H:%M};{c:.1f};{h}", "Data i czas;Temperatura [°C];Wilgotność [%]").encode("cp1250")


@layout()
def swedish(r):
    return rows(r, "{t:%Y-%m-%d};{t:%H:%M};{c:.1f};{h}", "Datum;Tid;Temperatur (°C);Relativ luftfuktighet (%)")


@layout()
def danish(r):
    return rows(r, "{t:%d-%m-%Y};{t:%H.%M.%S};{c:.1f};{h}", "Dato;Tid;Temperatur;Fugtighed")


@layout()
def wide_utf16(r):
    return rows(r, "{t:%Y-%m-%d %H:%M:%S}\t{c:.1f}\t{h}", "Time\tTemperature (°C)\tHumidity (%)").encode("utf-16-le")


@layout()
def wide_utf32(r):
    return rows(r, "{t:%Y-%m-%d %H:%M:%S}\t{c:.1f}\t{h}", "Time\tTemperature (°C)\tHumidity (%)").encode("utf-32-be")


@layout()
def unit_above(r):
    return rows(r, "{t:%Y-%m-%d %H:%M},{f:.2f},{h}", "Serial,123\nTemperature unit,°F\n\nTime,Temperature,Humidity")


@layout()
def kelvin(r):
    return rows(r, "{t:%Y-%m-%d %H:%M},{k:.2f},{h}", "Time,Temperature (K),RH (%)")


@layout()
def both_units(r):
    return rows(r, "{t:%Y-%m-%d %H:%M},{c:.1f},{f:.2f},{h}", "Time,Temp (°C),Temp (°F),RH (%)")


@layout()
def event_rows_between(r):
    lines = rows(r, "{t:%Y-%m-%d %H:%M},{c:.1f},{h},", "time,temp (°C),rh (%),event").splitlines()
    lines.insert(3, f"{r[1][0]:%Y-%m-%d %H:%M},,,lid open")
    return "\n".join(lines) + "\n"


@layout()
def two_exports_in_one_file(r):
    half = len(r) // 2
    return rows(r[:half], "{t:%Y-%m-%d %H:%M},{c:.1f},{h}", "time,temp (°C),rh (%)") + rows(
        r[half:], "{t:%Y-%m-%d %H:%M},{h},{c:.1f},3.0", "time,rh (%),temp (°C),battery"
    )


@layout(asked=True)
def no_heading(r):
    return rows(r, "{t:%Y-%m-%d %H:%M},{c:.1f},{h}")


@layout(asked=True)
def no_heading_humidity_first_and_record_numbers(r):
    return rows(r, "{n},{t:%Y-%m-%d %H:%M},{h},{c:.1f},3.3")


@layout()
def quoted_decimal_commas(r):
    return "".join(
        ['"Zeit","Temperatur [°C]","Feuchte [%]"\n']
        + [f'"{t:%d.%m.%Y %H:%M}","{c:.1f}","{h}"\n'.replace(f"{c:.1f}", f"{c:.1f}".replace(".", ",")) for t, c, h in r]
    )


@layout()
def am_pm_month_first(r):
    return rows(r, '"{t:%b %d, %Y %I:%M %p}",{f:.2f},{h}', "Timestamp,Temperature(°F),Relative Humidity(%)")


@layout()
def two_digit_years_of_old(r):
    return rows(r, "{t:%d.%m.%y};{t:%H:%M};{c:.1f};{h}", "Datum;Zeit;Temp;Feuchte")


@layout()
def indoor_and_outdoor(r):
    return rows(
        r,
        "{t:%Y-%m-%d %H:%M},{c:.1f},{h},12.5,80",
        "Time,Indoor Temperature(°C),Indoor Humidity(%),Outdoor Temperature(°C),Outdoor Humidity(%)",
    )


@layout()
def zone_in_each_stamp(r):
    return rows(r, "{t:%Y-%m-%dT%H:%M:%S}+00:00;{c:.1f};{h}", "time;temperature;humidity")


@layout()
def failed_readings(r):
    lines = rows(r, "{t:%Y-%m-%d %H:%M},{c:.1f},{h}", "time,temperature,humidity").splitlines()
    lines.insert(4, f"{r[2][0]:%Y-%m-%d} 99:99,Failed to read,Failed to read")
    return "\n".join(lines) + "\n"

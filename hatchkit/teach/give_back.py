"""What marking gives back: a page for each student, one for the class, and the marks as CSV, in a new folder."""

import json
from pathlib import Path

import pandas as pd

from hatchkit.figures.chart import chart
from hatchkit.figures.course import case_picture
from hatchkit.pages.frame import template
from hatchkit.records.writing import write_whole
from hatchkit.say import text
from hatchkit.teach import case_words
from hatchkit.teach.marking import pairs, rules, unused, write_marks

PARTS = ("stage", "cause", "size", "facts")


def give_back(marking, lesson, out) -> Path:
    """Write ``class.html``, ``marks.csv`` and ``case_NN.html`` for each answer into a new folder.

    Parameters
    ----------
    marking : teach.marking.Marking
    lesson : path
        The lesson folder, whose ``teacher/answers`` holds what is shown again.
    out : path
        The folder; where it exists already, the next number is put behind its name.

    Returns
    -------
    Path
        The folder that was written.
    """
    out = unused(out)
    out.mkdir(parents=True)
    shown = {case: _shown(lesson, case) for case in marking.marks["case"]}
    for row in marking.marks.to_dict("records"):
        if row["answered"]:
            width = marking.book.set_index("case").loc[row["case"]]
            page = student_page(row, shown[row["case"]], width=width["width"], sure=width["shown"])
            write_whole(out / f"case_{row['case']}.html", page)
    write_whole(out / "class.html", class_page(marking, shown))
    write_marks(marking.marks, out / "marks.csv")
    return out


def _shown(lesson, case):
    path = Path(lesson) / "teacher" / "answers" / f"case_{case}_shown.json"
    return json.loads(path.read_text(encoding="utf-8")) if path.exists() else None


def student_page(row: dict, shown: dict | None, *, width, sure) -> str:
    """What was right, what the records show, each statement with its reason, and the picture to look at again.

    Parameters
    ----------
    row : dict
        Row of the marks.
    shown : dict or None
        What `teach.cases.Case.shown_again` kept.
    width : float
        Of a careful reader's interval.
    sure : str
        Planted causes with how sure a careful reader can be.
    """
    sections = [_parts(row, width, sure), dict(head=text("teach_page_answer"), lines=[row["said"], row["told"]])]
    if shown:
        sections += [_statements(row, shown), dict(head=text("teach_page_again"), picture=_picture(shown))]
    if row["finding"]:
        sections.append(dict(head=text("teach_page_finding"), lines=[row["finding"]]))
    sections.append(dict(head=text("teach_page_rules"), points=rules(), lines=[text("teach_page_invented")]))
    return template("give_back", __package__).render(
        title=text("teach_page_title", dict(case=row["case"])),
        sections=sections,
        lead=text("teach_page_mark", dict(mark=row["share_of_mark"])),
    )


def _parts(row, width, sure):
    stages = pairs(row["stages"])
    truth = {
        "stage": case_words.stage_words(max(stages, key=stages.get, default="none")),
        "cause": ", ".join(map(case_words.cause_words, row["can_tell"].split())),
        "size": text("teach_page_eggs", dict(eggs=row["eggs_lost"], width=width)),
        "facts": row["bears"],
    }
    given = {
        "stage": row["student_stage"],
        "cause": row["student_causes"].replace(" ", ", "),
        "size": text("teach_page_interval", dict(low=row["student_low"], high=row["student_high"])),
        "facts": row["student_facts"],
    }
    rows = [
        dict(
            cells=[
                text(f"teach_page_part_{part}"),
                given[part] or "-",
                truth[part] or "-",
                f"{100 * row[f'{part}_credit']:.0f} %",
            ],
            wrong=row[f"{part}_credit"] < 0.5,
        )
        for part in PARTS
    ]
    head = [text(f"teach_page_head_{name}") for name in ("part", "given", "truth", "earned")]
    lines = [text("teach_page_shown", dict(shown=sure))] if sure else []
    return dict(head=text("teach_page_parts"), table=dict(head=head, rows=rows), lines=lines)


def _statements(row, shown):
    ticked = set(row["student_facts"].split())
    rows = []
    for fact in shown["statements"]:
        mine = fact["letter"] in ticked
        wrong = mine != (fact["kind"] == "bears") and fact["kind"] != "free"
        rows.append(
            dict(
                wrong=wrong,
                cells=[
                    fact["letter"],
                    case_words.statement(fact["code"], fact["numbers"]),
                    text("teach_page_ticked" if mine else "teach_page_left"),
                    text(f"teach_page_kind_{fact['kind']}"),
                    text(f"teach_why_{fact['why']}"),
                ],
            )
        )
    head = ["", *(text(f"teach_page_head_{name}") for name in ("statement", "you", "counts", "why"))]
    return dict(head=text("teach_page_statements"), table=dict(head=head, rows=rows))


def _picture(shown):
    own = ", ".join(f"{name} {100 * eggs[0] / shown['eggs'][0]:.0f} %" for name, eggs in shown["stages"].items())
    others = ", ".join(f"{name} {100 * eggs[1] / shown['eggs'][1]:.0f} %" for name, eggs in shown["stages"].items())
    later = [temp for day, temp in zip(shown["log"]["day"], shown["log"]["temp_c"], strict=True) if day > 1]
    log = text("teach_picture_log", dict(low=min(later), high=max(later))) if later else text("teach_picture_no_log")
    alt = f"{text('teach_picture_stages', dict(own=own, others=others))} {log}"
    return chart(case_picture(shown), alt=alt)._repr_html_()  # escapes its alt text itself; the template takes it so


def class_page(marking, shown: dict) -> str:
    """Marks of all, how hard each part was, and which kinds of statements were missed by whom.

    Parameters
    ----------
    marking : teach.marking.Marking
    shown : dict
        Case -> what `teach.cases.Case.shown_again` kept, or None.
    """
    marks = marking.marks
    done = marks[marks["answered"]]
    lead = (
        text(
            "teach_class_mean",
            dict(mean=done["share_of_mark"].mean(), low=done["share_of_mark"].min(), high=done["share_of_mark"].max()),
        )
        if len(done)
        else text("teach_class_none")
    )
    head = [
        text("teach_class_head_case"),
        *(text(f"teach_page_part_{part}") for part in PARTS),
        text("teach_class_head_mark"),
    ]
    rows = [
        dict(
            cells=[
                row["case"],
                *(f"{100 * row[f'{part}_credit']:.0f} %" for part in PARTS),
                f"{100 * row['share_of_mark']:.0f} %",
            ]
            if row["answered"]
            else [row["case"], "", "", "", "", text("teach_class_no_answer")]
        )
        for row in marks.to_dict("records")
    ]
    sections = [dict(head=text("teach_class_students"), table=dict(head=head, rows=rows))]
    if len(done):
        hard = [
            dict(cells=[text(f"teach_page_part_{part}"), f"{100 * done[f'{part}_credit'].mean():.0f} %"])
            for part in PARTS
        ]
        sections.append(
            dict(
                head=text("teach_class_items"),
                lines=[text("teach_class_items_note")],
                table=dict(head=[text("teach_page_head_part"), text("teach_class_head_difficulty")], rows=hard),
            )
        )
        sections.append(_missed(done, shown))
    if len(marking.problems):
        sections.append(dict(head=text("teach_class_problems"), points=marking.not_taken()))
    return template("give_back", __package__).render(
        title=text("teach_class_title", dict(answered=len(done), cases=len(marks))), lead=lead, sections=sections
    )


def _missed(done, shown):
    columns = ["code", "kind", "case", "ticked"]
    told = [
        (fact["code"], fact["kind"], row["case"], fact["letter"] in row["student_facts"].split())
        for row in done.to_dict("records")
        for fact in (shown[row["case"]] or {"statements": []})["statements"]
    ]
    facts = pd.DataFrame(told, columns=columns).astype({"ticked": bool})
    facts["off"] = facts["ticked"].where(facts["kind"] != "bears", ~facts["ticked"]) & (facts["kind"] != "free")

    def who(own, kind):
        cases = own.loc[own["off"] & (own["kind"] == kind), "case"].tolist()
        return f"{len(cases)} of {(own['kind'] == kind).sum()}{': ' if cases else ''}{', '.join(cases)}"

    hardest = sorted(facts.groupby("code", sort=False), key=lambda part: -part[1]["off"].sum())
    rows = [dict(cells=[text(f"teach_kind_{code}"), who(own, "bears"), who(own, "not")]) for code, own in hardest]
    head = [text(f"teach_class_head_{name}") for name in ("kind", "missed", "wrong")]
    return dict(
        head=text("teach_class_missed"), lines=[text("teach_class_missed_note")], table=dict(head=head, rows=rows)
    )

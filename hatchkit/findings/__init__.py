"""Questions and what the records answer: facts for pages and notebooks, never sentences.

`findings/season.py: review`, `batch.py: poor_hatch`, `years.py: years` ask their questions in order (`ASKED`) and
return `Findings`: facts of title and counts, the `Finding`s, the records. A finding holds codes and numbers only;
`say/messages/<language>/season.ftl`, `batch.ftl`, `found.ftl` have the words: `ask_<question>`, the answer's code,
`table_<name>`, `head_<column>`, `picture_<figure>`. Facts may be things to be said themselves (`Said`, a message;
`Told`, a function of `say`; a cell of a table may be one). `Composed` is left for a refusal that has no code yet
(`finding.refused`: rooms of records and season).

- `page.html.j2`, `page.css`: one template and one style sheet for all findings: first screen, contents, sections,
  `<details>`, records; dark, print
- `page.py`: `page`, `write_page`, `file_name`
- `parts.py`: sentence, table, picture of a finding in a language and unit; `say/cells.py` writes the cells

`widgets/shown.py` (`answer`, `show`) and `widgets/batch.py` (`BatchChoice`) show the same findings in notebooks 1
and 2. Pictures are SVG on a page and PNG in a notebook, where SVG within HTML is left out as long as the notebook
is not trusted.

Decisions
- **Poor** (`advice/poor_hatch.py: standing`) is a hatch that lies a spread or more below what is usual, of
  developing eggs *or* of the eggs set: a batch that is poor because of its clears is poor. The poorest is the one
  furthest below in either.
- Shared-out eggs are told whole, by largest remainders, so that the sum stays; the tables of the rooms keep their
  parts of eggs.
- Folded parts stand open with `--full` only; closed ones are left out on paper.
- The first sheet of paper ends before the question that `Findings.sheet` names.
- **To add a question**: a function that takes the `Work` and returns a `Finding` or None, its name in an `ASKED`,
  its messages in every language.
"""

# Marks: the rules, and what is told a student about an answer.

teach_rule_stage = Stage, { $share } of the mark: all of it for the stage in which the cause took most eggs (or nearly as many, four fifths), half for another with at least a quarter of them.
teach_rule_cause = Cause, { $share }: all of it for a cause that the records show, half for another of the same kind ({ $kinds }). Where two can be told, each is half; a second one that is not there halves what the first earns.
teach_rule_none = "None can be told" is right, for stage and cause, where nothing was wrong or the records cannot show what was. What counts is how sure a careful reader can be who knows what was planted: where the records speak for both about equally, both are right; where they speak three to one for one, the other earns a third. Half is earned where the cause took less than luck alone moves.
teach_rule_size = Eggs lost, { $share }, by the interval score: its width, and ten times each egg by which the truth lies outside. All of it up to the width of a careful reader's interval, none from three times that. A narrow interval that misses earns less than an honest wide one.
teach_rule_facts = Statements, { $share }: the share ticked of those that bear on the answer, less the share ticked of those that do not. All ticked, or none, earns nothing; statements about which one may think either way are not counted.
teach_rule_reasons = An answer counts with its reasons: stage, cause and eggs lost earn { $alone } of their part by themselves, and the rest in proportion to what the statements earn.
teach_told_stage = stage { $given } is { $credit ->
        [right] right
        [half] half right (the cause took most { $truth })
        [nothing] not right (the cause took most { $truth })
       *[part] right in part, as far as the records go (the cause took most { $truth })
    }
teach_told_no_stage = no stage that is understood (the cause took most { $truth })
teach_told_cause = { $given } as cause is { $credit ->
        [right] right
        [nothing] not right (planted: { $planted }; to be told from the records: { $truth })
       *[part] right in part (planted: { $planted }; to be told from the records: { $truth })
    }
teach_told_no_cause = no cause that is understood (planted: { $planted }; to be told from the records: { $truth })
teach_told_size = { $low } to { $high } eggs lost { $inside ->
        [yes] holds the true { $truth }
       *[no] does not hold the true { $truth }
    }, and earns { SHARE($credit) } of this part
teach_told_no_size = no number of eggs lost that is understood (it was { $truth })
teach_told_facts = of { $bears } statements that bear on it { $hit } ticked, of { $others } that do not { $false } ticked
teach_told = Case { $case } ({ $file }), { SHARE($mark) } of the mark: { $parts }.
teach_no_answer = Case { $case }: no answer was found. { $said }
teach_why_where = This is where the eggs went.
teach_why_elsewhere = Not where the cause took its eggs.
teach_why_luck = The loss is within what luck gives: with this, no cause can be told by the hatch alone.
teach_why_no_luck = The hatch was poorer than luck alone explains.
teach_why_same_hens = The same hens elsewhere: it tells the flock from the machine.
teach_why_same_machine = The same machine at another time: it tells a passing fault from a lasting one.
teach_why_same_days = The same days in the other machine: it tells the house from the machine.
teach_why_nothing_shared = It shares neither hens nor machine nor days, so it tells nothing of this batch.
teach_why_not_so = Not what the records hold.
teach_why_spell = The spell is in the log and harmed these eggs.
teach_why_harmless = The spell is in the log, but too short or too mild to matter.
teach_why_no_spell = So the log shuts out a long warm or cold spell.
teach_why_storage = So long a storage was what cost these eggs.
teach_why_harmless_storage = True of many batches that hatched well; the deaths do not point to it.
teach_why_age = The hens' age was what cost these eggs.
teach_why_harmless_age = True of flocks that hatch well; the eggs do not point to it.
teach_why_humidity = The air was what cost these eggs.
teach_why_usual_humidity = Within what the machine's other runs had without harm.
teach_why_hours = Early or late by so much, with a log that looks right, points to the probe.
teach_why_usual_hours = As the other batches, or without weight here.
teach_why_remark = The keeper saw it.
teach_why_wrong_remark = The remark is mistaken: nothing of the kind shows in log or eggs.
teach_why_idle_remark = True, and beside the point.
teach_why_clock = True: compare with the setting. It moves the day of a spell, not its harm.

# Pages for students and for the class.

teach_page_title = Case { $case }: what was right
teach_page_mark = { SHARE($mark) } of the mark
teach_page_parts = Part by part
teach_page_part_stage = Stage
teach_page_part_cause = Cause
teach_page_part_size = Eggs lost
teach_page_part_facts = Statements
teach_page_head_part = Part
teach_page_head_given = Your answer
teach_page_head_truth = What the records show
teach_page_head_earned = Earned
teach_page_head_weight = of the mark
teach_page_truth_none = none can be told
teach_page_interval = { $low } to { $high }
teach_page_eggs = { $eggs } (a careful reader's interval is { $width } wide)
teach_page_shown = How sure a careful reader can be: { $shown }
teach_page_answer = The answer
teach_page_statements = Statement by statement
teach_page_head_statement = Statement
teach_page_head_you = You
teach_page_head_counts = It
teach_page_head_why = Why
teach_page_ticked = ticked
teach_page_left = left
teach_page_kind_bears = bears on it
teach_page_kind_not = does not
teach_page_kind_free = not counted
teach_page_again = The picture to look at again
teach_page_finding = Your finding, for a person to read
teach_page_rules = How the marks are given
teach_page_invented = An invented season. The marks were worked out by hatchkit; a teacher may mark differently.
teach_picture_stages = Share of eggs lost by stage: in the batch asked about { $own }; in the other batches together { $others }.
teach_picture_log = The air of the batch's machine from setting on, as logged: between { $low } and { $high } °C after the first day.
teach_picture_no_log = The log of the batch's machine is missing.
teach_class_title = The class: { $answered } of { $cases } answered
teach_class_mean = Mean mark { SHARE($mean) }, from { SHARE($low) } to { SHARE($high) }
teach_class_none = No answer was marked.
teach_class_students = Student by student
teach_class_items = How hard each part was
teach_class_items_note = Difficulty is the mean share earned; a part that all or none earned tells nothing of the students.
teach_class_missed = Statements that were missed or wrongly ticked, by kind
teach_class_missed_note = A kind comes up in many cases with other numbers. Missed: it bore on the answer and was left. Wrongly ticked: it did not bear on it.
teach_class_head_kind = Kind of statement
teach_class_head_missed = Missed by
teach_class_head_wrong = Wrongly ticked by
teach_class_head_case = Case
teach_class_head_mark = Mark
teach_class_head_difficulty = Mean earned
teach_class_problems = Not taken, or not as it stands there
teach_class_no_answer = no answer
teach_kind_stage = eggs lost in a stage, beside the others
teach_kind_luck = within luck
teach_kind_same_hens = the same hens
teach_kind_same_machine = the same machine at another time
teach_kind_same_days = the same days in the other machine
teach_kind_nothing_shared = a batch that shares nothing
teach_kind_other_hatch = a hatch to look up
teach_kind_spell = a spell in the log
teach_kind_no_spell = no spell in the log
teach_kind_storage = days of storage
teach_kind_age = age of the hens
teach_kind_setter_rh = humidity before the transfer
teach_kind_hatch_rh = humidity at hatch
teach_kind_last_chick = the hour of the last chick
teach_kind_remark = the remark
teach_kind_clock = the logger's clock

# The course.

teach_aim = Aim: { $aim } About { $minutes } minutes.
teach_progress = { $right } of { $of } ({ $minutes } min)
teach_progress_all = { $right } of { $of } exercises are right.

# The breakout lab.

teach_lab_number = Give one number: the day.
teach_lab_right = It is drawn as of day { $day }. The eye is good to about a day.
teach_lab_off = { $off } days off: it is { $later ->
        [yes] older
       *[no] younger
    } than that. Compare with the key again: eye, limbs, down, air cell, yolk.
teach_sheet_title = Breakout: what lies in an unhatched egg
teach_sheet_lead = Drawn schemes from stated proportions, hen's egg of 60 g; no substitute for photographs or for an egg in the hand. Open egg by egg, tick the nearest drawing, add up.
teach_sheet_batch = Batch, date, eggs opened, who
teach_sheet_candled = Before the candle
teach_sheet_opened = Opened, by day
teach_sheet_lying = How it lies (from day 18)
teach_sheet_signs = Signs
teach_sheet_tally = Tally
teach_sheet_others = Other birds
teach_sheet_others_note = Only what was published of the bird itself; for all others hen's days are stretched by the length, which no source endorses: take three days to either side.
teach_sheet_sources = Where the proportions come from
teach_sheet_day = day { $day }
teach_sheet_ring = fertile disc, nothing grew on
teach_sheet_nothing = nothing grew
teach_view_clear = clear
teach_view_blood_ring = blood ring
teach_view_stopped_mid = stopped in the middle
teach_view_rotten = rotten: do not open
teach_lie_right = right: head under the right wing, beak to the air cell
teach_lie_thighs = head between the thighs
teach_lie_small_end = head in the small end
teach_lie_left = head under the left wing
teach_lie_away = beak away from the air cell
teach_lie_feet = feet over the head
teach_lie_above = beak above the wing
teach_lie_across = across the egg
teach_sign_wet = wet: too little water lost
teach_sign_dry = dry and stuck: too much lost
teach_sheet_alt = { $what }: a drawn hen's egg in millimetres.

## On the pictures of the course

course_luck = Bars: how many of { $hatches } hatches of { $each } gave how many chicks; 95 of 100 lie between { EGGS($low) } and { EGGS($high) }, the tallest { $bars ->
        [one] bar
       *[other] bars
    } at { LIST($tallest) }.
course_arrangements = Bars: how often each difference comes out, from { TENTH($least) } to { TENTH($most) } points; the one that was seen, { TENTH($seen) }, is dashed, and the bars from it to the right are marked.
course_true_share_axis = Hatch (%); the upright line is the true share
course_looks_axis = Day of incubation; dotted: a look at the eggs
course_as_large = at least as large
course_lost_axis =
    Lost (% of set)
    filled: this batch,
    white: the others
course_no_log = no log of this machine
course_dry_skin = skin tight and dry
course_seen_from =
    from its back, blunt end up:
    R is its right wing, L its left
course_intervals_axis = One interval a hatch

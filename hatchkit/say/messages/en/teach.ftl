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
course_intervals_axis = One interval a hatch

# Answer sheets that are not taken, or not as they stand there.

sheet_folder_shut =
    .found = the folder cannot be opened
    .done = Not marked.
    .fix = Ask for the right to read it
sheet_teacher =
    .found = the teacher’s folder
    .done = Passed over
sheet_no_table =
    .found = not a table
    .done = Not marked.
    .fix = If it is an answer, save it as a table: .csv, .xlsx or .ods
sheet_seasons =
    .found = { $seasons ->
            [one] 1 season folder
           *[other] { $seasons } season folders
        } inside
    .done = Passed over, but for answer sheets in them
sheet_is_marks =
    .found = a table of marks that hatchkit wrote
    .done = Passed over: it is no answer sheet
sheet_is_book =
    .found = an answer book
    .done = Passed over: it is no answer sheet
sheet_no_headings =
    .found = no headings of an answer sheet; its first row is '{ $first }'
    .done = Not marked.
    .fix = Give it the headings { LIST($headings) }
sheet_twice =
    .found = two columns are called { $column }
    .done = Not marked.
    .fix = Leave one of them
sheet_lacks =
    .found = there is no column { LIST($columns) }
    .done = It counts as left empty
    .fix = Add it
sheet_slipped =
    .found = { $why ->
            [why] under why stands only a number ({ $field }), so the fields may have slipped
            [facts] under facts stands a number ({ $field }), so the fields may have slipped
           *[more] there are more fields than headings, and it is not plain which belongs where
        }
    .done = Not marked.
    .fix = Put a field that holds a comma in quotes, or leave out the comma
sheet_no_case =
    .found = the case is not given
    .done = Not marked.
    .fix = Write the number of the case in the column case
sheet_unknown_case =
    .found = the answer book has no case { $case }
    .done = Not marked.
    .fix = Fix the number, or look whether it is the book of this lesson
sheet_two_answers =
    .found = there is more than one answer for case { $case } (file and row: { LIST($places) })
    .done = Not marked.
    .fix = Leave one of them

# Remarks on an answer.

remark_several = under stage, '{ $given }' names more than one ({ LIST($several) }); name one
remark_near = under { $kind }, '{ $given }' is read as { $taken }
remark_no_stage = under stage, '{ $given }' is not understood (known: { LIST($known) })
remark_no_cause = under cause, '{ $given }' is none of the words of the list
remark_batch = the sheet names batch { $given }, but the case asks about batch { $asked }
remark_swapped = stage and cause stand in each other’s column and are taken as meant
remark_no_number = under { $field ->
        [eggs_lost_low] eggs lost, low
        [eggs_lost_high] eggs lost, high
       *[eggs_lost] eggs lost
    }, '{ $given }' is not understood as a number of eggs
remark_one_figure = a single figure is taken for an interval of no width
remark_one_side = the interval has one side only, so it does not count
remark_ends_swapped = the ends of the interval are the wrong way round and are swapped
remark_beyond = { $low } cannot be, as { $eggs } eggs were set
remark_cut = the interval { $low } to { $high } goes beyond the { $eggs } eggs set and is cut there
marks_rules = How the marks are given:
marks_answered = What was answered, with the truth in brackets:
marks_not_taken = Not taken, or not as it stands there:

# The checker of exercises.

exercise_open = Not answered yet. Put your answer in place of the dots and run the cell again.
exercise_nearly = Nearly: right as far as it goes. Give more decimals, or write the sum itself.
exercise_percent = Give shares between 0 and 1, not percent.
exercise_words = Take one of these words: { LIST($known) }.
exercise_others = The fault touched { COUNT($others) ->
        [one] batch
       *[other] batches
    } { LIST($others) } as well.

# What a written finding lacks.

finding_unwritten = Write one or two sentences between quotation marks: """...""".
finding_batch = Say which batch it is about.
finding_lost = Say what was lost: how many were dead.
finding_wrong_counts = The counts are not those of the table. How many were alive at the start, and how many of them were lost?
finding_counts = Give the counts themselves, so many of so many: a percentage alone hides how few there were.
finding_sure = Say how sure: the interval, from so much to so much percent.
finding_interval = The interval is not the one that belongs to these counts: see what interval() gave.
finding_days = Say when: the day on which they were last seen alive, and the day on which they were found dead.
finding_one_day = Nobody saw on which day they died: only after which look, and by which.
finding_beside = Say what it went together with: what else does the record tell of these eggs?
finding_room = Leave room: name one other explanation that the records do not rule out.
finding_claim = "{ $claim }" says more than these records can. Say what went together with what, or what could have been.
finding_last_word = (The checker goes by words. If yours say it in another way, a reader has the last word.)

# What lies beside the cases, and the answer book.

teach_guide =
    # Your case

    The seasons are invented. In your folder you find `season` (open it with hatchkit, as you would open
    your own) and `answer_form.xlsx`, which asks about one batch of it. Open it, choose from the lists, and save it
    (.xlsx, .ods and .csv are read):

    - the stage in which most of the eggs were lost to the cause
    - the cause, and a second one if you find two. **In some cases none can be told**: nothing was wrong, or the records
      cannot show what was. Then choose that
    - eggs lost: how many more eggs of the batch would have hatched without the cause. Eggs that would have been
      clear, or have died, in an ordinary batch as well do not count. Give two numbers between which you are 80 % sure that
      it lies (if you find no cause: 0 and what luck alone may hide)
    - tick the statements that are **true** by the records **and bear** on your answer: they speak for it, or shut out
      another. Some are true and beside the point, some are not what the records hold: look them up
    - your finding in one or two sentences; a person reads it

    Old hens, long storage and spells in the log happen in these seasons whether or not they did harm; a remark may be
    mistaken, a clock wrong, a batch miscounted, a log missing.

    The stages, as a book shows them: `infertile` (clear; an embryo that died too soon to be seen is a clear, too), `early`
    (days 1-7 of a hen's egg), `mid` (days 8-14), `late` (days 15-21, shell not
    broken), `pipped` (shell broken and died), `removed` (rotten), `none`. Other birds: thirds of the incubation.

    The causes to choose from:
teach_guide_marks = ## How the marks are given
teach_book_title = Answer book
teach_book_lead = For the teacher. { PLAIN($cases) } invented cases, made with seed { $seed }. Whoever knows the seed can make this answer book: keep it as you keep the book. Keep the folder teacher away from the students; the whole truth about every egg is in teacher/answers. Causes is what was planted, shown how sure a careful reader can be of it from the records, can tell what the right answer therefore is; eggs lost is how many more chicks the same eggs would have given without the causes, width a careful reader’s 80 % interval.
teach_book_rules = How the marks are given, as the students read it:
teach_book_answers = Answers

# What was planted in a simulated season.

planted_nothing = Batch { $batch }: nothing was planted; what was lost is ordinary luck.
planted_in = Batch { $batch }: { $told }
planted_took = { $what } Without that, { $lost } more of the { $set } eggs would have hatched.
planted_none = Nothing was planted: more background deaths than usual by luck.
planted_power_cut = A power cut of { TENTH($hours) } hours, from day { TENTH($day) }.
planted_lid_ajar = The lid stood ajar for { TENTH($hours) } hours, from day { TENTH($day) }.
planted_drift_warm = The thermostat drifted { STEP($size) } warm for { TENTH($hours) } hours, from day { TENTH($day) }.
planted_drift_cool = The thermostat drifted { STEP($size) } cool for { TENTH($hours) } hours, from day { TENTH($day) }.
planted_overheating = The machine overheated by { STEP($size) } for { TENTH($hours) } hours, from day { TENTH($day) }.
planted_probe_high = The probe reads { STEP($size) } high, so the machine ran { STEP($size) } cool.
planted_probe_low = The probe reads { STEP($size) } low, so the machine ran { STEP($size) } warm.
planted_humidity_low = The air was { TENTH($size) } points of humidity too dry.
planted_humidity_high = The air was { TENTH($size) } points of humidity too damp.
planted_dry_hatch = The air was { TENTH($size) } points of humidity too dry after the transfer.
planted_long_storage = The eggs had been stored for { TENTH($size) } days.
planted_low_fertility = Only { SHARE($size) } of the eggs of this flock are fertile.
planted_old_flock = The flock is { TENTH($size) } weeks old: fewer fertile eggs and more early deaths.
planted_turning_fault = The eggs were not turned as they should be (wanted deaths: { SHARE($share) } of the embryos).
planted_contaminated = Rot spread through the tray.
simulated = The season is in { $folder }.{ $answer ->
        [none] { "" }
       *[other] { " " }What was planted is in { $answer }.
    }

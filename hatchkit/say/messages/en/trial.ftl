# A split trial: its plan, and what it showed.

trial_arms = A trial compares two ways: name both, and call them differently.
trial_outcome = A trial cannot ask for { $outcome }; it can ask for { LIST($known) }.
trial_difference = A difference of { $difference } cannot be planned for: give a share from 0.01 to 0.6, such as 0.1 for ten of a hundred eggs.
trial_eggs = { $eggs } eggs in a set cannot be split: give 4 or more.
trial_blocks = The eggs of the hens or pens add up to { $sum }, and the set has { $eggs }: make the two agree.
trial_block = “{ $text }” is no hen or pen with its eggs: write it like "hen 4=6".
trial_columns = The sheet lacks { LIST($names) }: keep the headings as they were.
trial_folder = { $path } holds something already: name a new or an empty folder for the trial.
trial_no_plan = There is no plan of a trial (trial.toml) in { $path }.
trial_bad_plan = The plan { $path } cannot be read: { $why }.
trial_no_sheet = There is no sheet with set, egg and result in { $path }.

trial_plan = Split trial: “{ $usual_way }” against “{ $new_way }”, judged by { WORD($outcome, kind: "outcome") }. { $sets ->
        [one] One set
       *[other] { $sets } sets
    } of { EGGS($eggs) } eggs, half of each to either way, dealt by lot{ $blocks ->
        [0] { "" }
        [1] { "" }
       *[other] { " " }within each of { $blocks } hens or pens
    }.
trial_plan_eggs = From { SHARE($usual) }, as is usual, a difference of { SHARE($difference) } asks for { EGGS($needed) } eggs of each way; this plan has { EGGS($each) } and would show it in { TENTH($power) } of 10 trials.
trial_plan_short = That is too few to count on: more sets, or a larger difference.
trial_plan_rules = Both ways must lie in one machine, or change machines from set to set; who candles should not know which egg is which. Write hatched, dead, clear, pipped or out for every egg in the column Result; leave Arm as it is. What counts was laid down before the first egg: when all sets are done, run hatchkit trial on the folder.

trial_result = { $verdict ->
        [better] “{ $new_way }” did better than “{ $usual_way }”
        [worse] “{ $new_way }” did worse than “{ $usual_way }”
        [too_few] Too few results are in to say anything
       *[not_told] No difference between “{ $new_way }” and “{ $usual_way }” can be told
    }.
trial_counts = { WORD($outcome, kind: "outcome") }: { $new_good } of { $new_eggs } ({ SHARE($new_share) }) with “{ $new_way }”, { $usual_good } of { $usual_eggs } ({ SHARE($usual_share) }) with “{ $usual_way }”.
trial_size = Set by set the difference is { TENTH($difference) } points (95 % interval { TENTH($low) } to { TENTH($high) }); so large a one comes about by the lot alone in { TENTH($chance) } of 100 dealings.
trial_missed = The plan would have shown a difference of { SHARE($planned) } in { TENTH($power) } of 10 trials; a smaller one may be there.
trial_left = { $missing } eggs have no result, { $unread } results could not be read, { $moved } eggs were moved to the other way (they count where the lot had put them).
trial_plan_file = The plan of a split trial, made before the first egg was set: hatchkit trial judges by it.

# The frame of every page of findings, and what is common to all tables.

page_answer = The answer
page_how_sure = How sure is that?
page_do_now = What to do now
page_contents = On this page
page_more = More
page_records = See the records
page_unknown = What is not known
page_care = Take care
page_made = Made by hatchkit { $version } on { DAY($today) }.

# How sure an answer is, beside it.
how_sure_sure = (sure)
how_sure_likely = (likely)
how_sure_guess = (a guess among others)
how_sure_cannot_tell = (the records cannot tell)

shown_none = not known
shown_share = { SHARE($share) }
shown_share_range = { SHARE($share) } ({ SHARE($low) } to { SHARE($high) })
shown_step = { STEP($step) }
shown_degrees = { DEGREES($degrees) }
shown_time = { MINUTE($time) }
shown_number = { TENTH($number) }

# The drop-down of notebook 2.
form_batch = Batch:
form_batch_hatched = { $batch }: { $hatched } of { $set } hatched

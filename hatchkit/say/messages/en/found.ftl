# The records behind a page.
ask_records = What was read and assumed?
records_read = Read: { $batches ->
        [one] one batch
       *[other] { $batches } batches
    }{ $readings ->
        [0] , no temperature
       *[other]  and { $readings } readings of { LIST($machines, most: 6) }
    }. { $questions ->
        [0] { $assumed ->
            [likely] Some columns are taken on likelihood.
            [sure] Every column is sure.
           *[other] Nothing was assumed.
        }
        [one] One question is open.
       *[other] { $questions } questions are open.
    }
records_how = Could not be used: { $lost }; doubtful: { $doubtful }; notes: { $note }. Times are shown as in { $timezone }. To see how each column was read: hatchkit check.
table_problems = What could not be taken as it was written
head_severity = Kind
head_file = File
head_row = Row
head_found = Found
head_done = What was done
head_mend = How to mend it
severity_lost = not used
severity_doubtful = doubtful
severity_note = note

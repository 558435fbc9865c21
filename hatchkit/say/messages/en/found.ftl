# The records behind a page.
ask_records = What was read and assumed?
records_read = { $questions ->
        [0] { $assumed ->
            [likely] Some columns of the sheets are taken on likelihood
            [sure] Every column of the sheets is sure
           *[other] Nothing was assumed
        }
        [one] One question on the sheets is open
       *[other] { $questions } questions on the sheets are open
    }{ $unlike ->
        [0] .
        [one] , and one entry could not be taken as written.
       *[other] , and { $unlike } entries could not be taken as written.
    }
records_how = { $batches ->
        [one] One batch
       *[other] { $batches } batches
    }{ $readings ->
        [0] , no temperature.
       *[other] { " " }and { $readings } readings of { LIST($machines, most: 6) }.
    } Entries not used: { $lost }; doubtful: { $doubtful }; notes: { $note }. Times as in { $timezone }.
records_see = How each column was read, and what can be answered: hatchkit check, or notebook 0.
table_problems = What could not be taken as it was written
head_severity = Kind
head_file = File
head_row = Row
head_found = Found
head_done = What was done
head_fix = How to fix it
severity_lost = not used
severity_doubtful = doubtful
severity_note = note

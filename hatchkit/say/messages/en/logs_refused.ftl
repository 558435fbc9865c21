# Why a file cannot be read as a log.

log_refused = { $name } cannot be read as a sensor log: { $why }.
refuse_damaged = it is damaged
refuse_no_text = it is no text
refuse_empty = the file is empty
refuse_tail = it begins like a log, but from about { $percent } % of its length on most lines hold no reading; cut the rest off in a text editor
refuse_too_many_lines = it has more than { $millions } million lines; split it by month
refuse_too_large = it is larger than { $mb } MB; split it by month
refuse_unpacks_too_large = unpacked it is larger than { $mb } MB; split it by month
refuse_no_ordinary_file = it cannot be opened (it is not an ordinary file)
refuse_not_opened = it cannot be opened ({ $why })
refuse_archive = it is a damaged archive
refuse_archive_locked = it is a damaged archive, a damaged workbook, or locked with a password
refuse_archive_empty = the archive holds no file
refuse_no_rows = the database holds no table with rows
refuse_no_sheet = the workbook has no sheet
refuse_database = it is a damaged or locked database ({ $why })
refuse_pdf = it is a PDF, not a text file; export the log as CSV
refuse_bytes = it holds bytes that are no text
refuse_lines = its lines cannot be told apart ({ $why })
refuse_no_number = no line of it holds a number in its columns of temperature or humidity
refuse_channel = { $file } has no channel '{ $channel }'; it has { $there }.
refuse_temp_unit = temp_unit is '{ $unit }'; write "C", "F" or "K".
refuse_stretches = its column { $column } holds stretches of an hour ({ $example }) and no moments; write the hour at which each begins
refuse_minutes = its column { $column } holds numbers such as { PLAIN($example) }, which are no times of day but may be minutes since midnight; write the times as 07:30
refuse_hour_parts = its column { $column } holds numbers such as { $example }, which can be hours and minutes or parts of an hour; write the times as 07:30
refuse_twelve_hours = its clock shows the hours 1 to 12 and neither am nor pm, so morning and evening cannot be told apart; export the log with a clock of 24 hours
refuse_written_days = its numbers such as { $example } can be days with times ({ $form }) or seconds since 1970; write them as 2025-09-11 22:05
refuse_commas = a comma parts both its columns and its decimals, without quotes, so they cannot be told apart; export it with semicolons or with decimal points
refuse_many_columns = it has { $count } columns of temperature or humidity, more than the { $most } that hatchkit reads; export some of them
refuse_no_measure = it has dates and times but no column of temperature or humidity{ $headings ->
        [none] { "" }
       *[known] ; its headings are { $headings }
    }
refuse_days_without_measure = it has dates without a time of day, and no column named temperature or humidity
refuse_several_kinds = its column { $column } holds values of several kinds and neither a unit nor a name says which are temperatures; write the unit or the quantity beside each value
refuse_nothing_below = line { PLAIN($line) } has the headings of a log, but no line below it holds a date with a number; the first is line { PLAIN($below) }: "{ $example }"
refuse_no_reading = no line of it holds both a date with a time and a number; { $lacks ->
        [number] there are dates without a number beside them
        [date] there are numbers without a date
       *[both] there is neither
    }{ $line ->
        [none] { "" }
       *[known] , as in line { PLAIN($line) }: "{ $example }"
    }
refuse_no_day = its lines hold times of day and no date, and neither the lines above them nor the name of the file name one day; write the day into the name of the file
refuse_no_start = its times count from the start of the log ({ $column ->
        [none] one reading after the other
       *[named] { $column }
    }), and the lines above the readings do not say when that was; write a line such as Start: 2026-03-05 18:30 at the top
refuse_count_unit = its times count from the start of the log, and the heading { $column ->
        [none] of that column
       *[named] { $column }
    } does not say whether in seconds, minutes or hours; write for example "{ $column ->
        [none] Time
       *[named] { $column }
    } (min)"
refuse_two_orders = its dates change their order: "{ $one }" and those around it are written { WORD($first, kind: "value") }, "{ $two }" and those around it { WORD($second, kind: "value") }; part the file in two where the order changes
refuse_backwards = its times of day run backwards and stand without a date, so the day of each cannot be told; turn the lines around, or write the date beside each
refuse_hours_or_minutes = its column { $column } holds 0 to { $most } on one day, which can be hours or minutes past midnight; name the column hour, or write the times as 00:07
refuse_no_time = it has dates without a time of day
refuse_no_time_several = it has dates without a time of day, and several lines a day
refuse_no_date_column = its column { $column } holds numbers such as { $example }, which are read as no date; write them as 2025-09-11
refuse_no_date = no line of it holds a date, and the lines above the readings do not say { $lacks ->
        [start] when it began and how long a step is
       *[step] how long a step is, nor does a heading such as Elapsed (min) say in which column time is counted
    }
refuse_no_stamp = no column of it holds dates with times

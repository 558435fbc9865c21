# What could not be taken from the loggers' files as it was written.

log_headings_fewer =
    .found = the headings are one fewer than the columns
    .done = The first column is taken for line numbers without a heading.
    .fix = Write a heading above the first column.
log_headings_more =
    .found = there are more headings than columns; none stands below { LIST($names, most: 6) }
    .done = The others are taken for the columns below them.
    .fix = Put a heading that holds a comma into quotes.
log_by_behaviour =
    .found = { $header ->
        [yes] no header names a temperature or humidity
       *[no] the file has no header
    }; the columns were told apart by how their values behave
    .done = Taken as the questions say.
    .fix = Put a line of names above the readings, or answer the question.
log_against_values =
    .found = the middle values of { LIST($names, most: 6) } ({ LIST($middles, most: 6) }) do not look like what the headings say
    .done = Read as the headings say.
    .fix = Look whether the headings stand above the wrong columns.
log_exchanged =
    .found = in { $count ->
        [one] one line
       *[other] { $count } lines
    } the temperature of { $name } is above 45 °C and the humidity stands where its temperature does elsewhere
    .done = Read as the headings say.
    .fix = Look whether two exports of different layout were put together.
log_summer_open =
    .found = the file says its clock is { $clock } and speaks of summer time
    .done = Read as { $taken }; with summer time it would be { $other }.
    .fix = Answer the question.
log_only_extremes =
    .found = { $names }: the lowest and the highest of each interval, and no mean
    .done = Each is read as a probe of its own.
    .fix = Export the mean as well.
log_encoding_open =
    .found = line { PLAIN($line) } reads "{ $one }" in the encoding { $page } and "{ $two }" in { $other }
    .done = Read as { $page }.
    .fix = Export the log in UTF-8.
log_member_left_out =
    .found = { $name } in the archive cannot be read: { $why }
    .done = Left out.
log_part_refused =
    .found = { $part ->
        [none] it
       *[named] { $part }
    } is no log: { $why }
    .done = Left out.
log_sections =
    .found = { $count } exports with headings of their own stand in one file
    .done = Each is read by its own headings.
log_twins =
    .found = { $names }: the same temperature once more in another unit
    .done = Read once.
log_unused =
    .found = columns that are no temperature or humidity of the air: { LIST($names, most: 12) }
    .done = Not used.
log_lone_quotes =
    .found = a quote mark without a partner in { $count ->
        [one] one line
       *[other] { $count } lines
    }, the first is line { PLAIN($line) }
    .done = The mark is passed over.
    .fix = Look at these lines in a text editor.
log_order =
    .found = dates such as { $example }
    .done = Read as { WORD($order, kind: "value") }: { WORD($how, kind: "order_how") }{ COUNT($against) ->
        [0] { "" }
       *[other] ; { WORDS($against, kind: "order_against") }
    }.
log_order_open =
    .found = dates such as { $example } can be read in more than one order
    .done = Read as { WORD($order, kind: "value") }{ $how ->
        [none] { "" }
       *[known] , { WORD($how, kind: "order_how") }
    }{ COUNT($against) ->
        [0] { "" }
       *[other] ; { WORDS($against, kind: "order_against") }
    }.
    .fix = Write day_first = true or false under [sensors] in season.toml.
order_how_said = as day_first says
order_how_continuity = only so do the days follow each other
order_how_a_day_above_12 = other orders give days that do not exist
order_how_in_order = only so are the lines in order
order_how_weekday = only so do the days of the week fit
order_how_other_files = as in the other files
order_how_dots = dates with dots are written day first
order_how_half_day = with am and pm the month is written first
order_how_batches = which falls into the season's batches
order_against_said = day_first says otherwise
order_against_other_files = other files are written otherwise
order_against_a_day_above_12 = some dates exist only the other way round

log_machine_named =
    .found = probe { $probe } in { $file }
    .done = Taken for incubator { $machine } by its { $how ->
        [file_name] file name
       *[probe_name] probe name
    }.
    .fix = If not: [incubators.{ $key }] files = ["..."]
log_machine_guessed =
    .found = { $file } names no incubator
    .done = Taken for { $machine }, { $how ->
        [only_one] the only one of the season
       *[dates] the only machine without a log that had eggs at that time
    }.
    .fix = [incubators.{ $key }] files = ["{ $file }"]
log_machine_unknown =
    .found = { $file } (probe { LIST($probes, most: 6) }) names no incubator of the season
    .done = Kept as incubator "{ $taken }".
    .fix = Write in season.toml, with the right name: { $line }
log_not_a_log =
    .found = { $name } is no text, workbook or archive
    .done = Left out.
    .fix = Take it out of the folder sensors, or export it as CSV.
log_beside_batches =
    .found = { $name } is a log and lies beside the table of batches
    .done = Read like the logs in the folder sensors.
    .fix = Put it into a folder named sensors.
log_lost =
    .found = { $why }
    .done = Left out.
    .fix = Export the log again as CSV, or take the file out of the folder sensors.
log_marked =
    .found = a mark behind { $count ->
        [one] one value
       *[other] { $count } values
    } of { $quantity ->
        [temp] { $name }
       *[rh] the humidity of { $name }
    }, the first in line { PLAIN($line) }: "{ $example }"
    .done = { $doubted ->
        [yes] Kept and marked "marked".
       *[no] Read without the mark, as nearly all bear it.
    }
    .fix = See in the logger's manual what the mark means.
log_without_decimals =
    .found = the middle value of { $name } is { PLAIN($middle) }
    .done = Divided by { $factor }.
    .fix = Export with decimals, or answer the question.

log_lines_where = { $count ->
        [one] { "" }
       *[other] { $first ->
            [none] { "" }
           *[known] , the first in line { PLAIN($first) }
        }
    }{ $example ->
        [none] { "" }
       *[known] : "{ $example }"
    }
log_lines_blank =
    .found = { $count ->
        [one] 1 blank line
       *[other] { $count } blank lines
    }{ log_lines_where }
    .done = Left out.
log_lines_repeated_header =
    .found = { $count ->
        [one] 1 repeated header line
       *[other] { $count } repeated header lines
    }{ log_lines_where }
    .done = Left out.
log_lines_words =
    .found = { $count ->
        [one] 1 line
       *[other] { $count } lines
    } of text without a time{ log_lines_where }
    .done = Left out.
log_lines_untimed =
    .found = { $count ->
        [one] 1 line
       *[other] { $count } lines
    } with a value but no time that can be read{ log_lines_where }
    .done = Left out.
    .fix = Correct the date in the file{ $why ->
        [no_such_day] : there is no such day in the calendar
        [year] : its year cannot be right
        [hour] : there is no such time of day
        [no_hour] : its time of day cannot be read
        [order] : it fits only if day and month stand the other way round
        [no_year] : it has no year
       *[other] { "" }
    }.
log_lines_events =
    .found = { $count ->
        [one] 1 line
       *[other] { $count } lines
    } of text with a time (events){ log_lines_where }
    .done = Left out of the readings.
log_lines_other_quantities =
    .found = { $count ->
        [one] 1 line
       *[other] { $count } lines
    } of other quantities{ log_lines_where }
    .done = Not read.
log_lines_merged =
    .found = { $count ->
        [one] 1 line
       *[other] { $count } lines
    } that repeat or complete a reading{ log_lines_where }
    .done = Merged with it.
log_lines_other_channels =
    .found = { $count ->
        [one] 1 line
       *[other] { $count } lines
    } of other channels{ log_lines_where }
    .done = Not asked for.
log_lines_top =
    .found = { $count ->
        [one] 1 line
       *[other] { $count } lines
    } at the top ({ $above ->
        [both] title and header
        [header] header
       *[title] title
    }){ log_lines_where }
    .done = Not readings.
log_lines_in_quotes =
    .found = { $count ->
        [one] 1 line
       *[other] { $count } lines
    } that run on inside quotes or after the end mark{ log_lines_where }
    .done = Left out.
    .fix = Open the file in a text editor and look for a stray quote mark.
log_lines_no_readings =
    .found = { $count ->
        [one] 1 line
       *[other] { $count } lines
    } and no readings{ log_lines_where }
    .done = The file has the header of a log and nothing below it.
    .fix = Export the log again.
log_lines_section =
    .found = { $count ->
        [one] 1 line
       *[other] { $count } lines
    } of a section that cannot be read{ log_lines_where }: { $why }
    .done = Left out.

log_empty_lines =
    .found = { $count } of { $of } lines have no value of { $name }
    .done = Those lines give no reading of it.
log_odd_cells =
    .found = text in { $count ->
        [one] one cell
       *[other] { $count } cells
    } of { $name }, the first in line { PLAIN($line) }: "{ $example }"
    .done = Taken as no value.
log_missing_codes =
    .found = { $count ->
        [one] 1 reading
       *[other] { $count } readings
    } of { $name } with { $values }, a code for no reading
    .done = Marked missing code; temp_c is left empty.
log_unit_against =
    .found = { $name } is headed °{ $said } but its values can only be { WORD($unit, kind: "degree") }
    .done = Read as { WORD($unit, kind: "degree") }.
    .fix = Write temp_unit = "C" or "F" under [sensors] in season.toml.
log_unit_guessed =
    .found = { $name } has no unit{ $middle ->
        [none] { "" }
       *[known] ; its middle value is { TENTH($middle) }
    }
    .done = Read as { WORD($unit, kind: "degree") }.
log_unit_open =
    .found = { $name } has no unit and its middle value is { TENTH($middle) }
    .done = Read as { WORD($unit, kind: "degree") }.
    .fix = Write temp_unit = "C" or "F" under [sensors] in season.toml.
degree_C = °C
degree_F = °F
degree_K = K
log_humidity_impossible =
    .found = { $count ->
        [one] 1 humidity value
       *[other] { $count } humidity values
    } of { $name } that cannot be: { $values }
    .done = rh_pct is left empty there; the temperature stays.
log_humidity_share =
    .found = humidity of { $name } lies between 0 and 1
    .done = Read as a share and shown in %.
log_humidity_wet_bulb =
    .found = { $name } has a wet bulb and no humidity
    .done = Humidity worked out for { $air ->
        [still] a wick in still air
       *[fan] a ventilated wick
    } (coefficient { $coefficient }e-4 per K) at { TENTH($pressure) } kPa.
    .fix = air = "still" or "fan" and altitude_m of the incubator in season.toml change that.
log_humidity_dew_point =
    .found = { $name } has a dew point and no humidity
    .done = Humidity worked out from the dew point.

log_two_probes =
    .found = { $file } and { $other } overlap in time with different readings of { $probe } in incubator { $machine }
    .done = Taken for two probes; this one is called { $taken }.
log_again =
    .found = { $count ->
        [one] 1 reading
       *[other] { $count } readings
    } of { $probe } that also stand in { $other }
    .done = Merged.
log_clash =
    .found = { $count ->
        [one] 1 reading
       *[other] { $count } readings
    } of { $probe } against other values at the same time in { $other }
    .done = Both kept and marked "repeated".
    .fix = Take the wrong file out.
log_newest_first =
    .found = { $name } is written newest first
    .done = Put in order of time.
log_times_back =
    .found = the times of { $name } go back { $count ->
        [one] once
       *[other] { $count } times
    }, the first in line { PLAIN($line) }
    .done = Put in order of time.
    .fix = Check that the file holds one probe only.
log_clock_step =
    .found = the clock of { $name } went back or lost its date at line { PLAIN($line) }; { $count ->
        [one] 1 reading
       *[other] { $count } readings
    } beside the others
    .done = Kept and marked "clock step".
    .fix = Correct the times in the file.
log_merged =
    .found = { $count ->
        [one] 1 reading
       *[other] { $count } readings
    } of { $name } with the time of another, equal or completing it
    .done = Merged with it.
log_doubted =
    .found = { $count ->
        [one] 1 reading
       *[other] { $count } readings
    } of { $name } { $doubt ->
        [stuck] without any change for hours
        [spike] with a jump faster than the air of an egg box can make
        [out_of_range] with a value no incubator has
        [repeated] with the time of another of other value
       *[missing_code] without a value
    }, the first at { $start }, the last at { $end }
    .done = Kept and marked "{ $mark }".
log_gaps =
    .found = { $count ->
        [one] one gap of { $hours ->
            [one] { TENTH($hours) } hour
           *[other] { TENTH($hours) } hours
        } in the readings of { $name }
       *[other] { $count } gaps in the readings of { $name }, the longest of { $hours ->
            [one] { TENTH($hours) } hour
           *[other] { TENTH($hours) } hours
        }
    }: nothing between { $start } and { $end }
    .done = The gap stays empty.
log_zone_said =
    .found = the file says its clock is { $clock }
    .done = Taken as its zone.
log_zone_none =
    .found = the file and season.toml name no time zone
    .done = Times are taken as the clock showed them.
    .fix = Write timezone = "Europe/Rome" (or yours) in season.toml.

clock_not_followed =
    .found = the clock of the logger did not follow the change of the hour on { $day }
    .done = The whole file is read in the time it began with.
    .fix = If that is wrong, set timezone for this file's incubator in season.toml.
clock_put_right =
    .found = the clock goes { $way ->
        [on] on
       *[back] back
    } by an hour at { $time }, as if it was put right by hand
    .done = What follows is read in the new time.
    .fix = Answer the question.
clock_hour_twice =
    .found = { $count ->
        [one] 1 reading
       *[other] { $count } readings
    } in the hour that came twice on { $day }
    .done = The order of the file tells the first pass from the second.
clock_hour_skipped =
    .found = { $count ->
        [one] 1 reading
       *[other] { $count } readings
    } in the hour that was left out on { $day }
    .done = They are read as one hour later.
no_such_zone = There is no time zone '{ $zone }'; write it like timezone = "Europe/Rome".

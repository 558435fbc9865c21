# The loggers' files, as hatchkit check shows them.

logs_head = The loggers' files
log_read = { COUNT($files) ->
        [one] { $files }
       *[other] { COUNT($files) } files ({ LIST($files, most: 1) })
    }: { $machine }{ $known ->
        [none] { "" }
        [answer] {" "}(as you answered)
        [season_toml] {" "}(by season.toml)
        [file_name] {" "}(by the file's name)
        [probe_name] {" "}(by the probe's name)
        [only_one] {" "}(the only machine)
       *[dates] {" "}(by the dates of its eggs)
    }, { MINUTE($start) } to { MINUTE($end) }, { $readings ->
        [one] one reading
       *[other] every { $step } min, { $readings } readings
    }{ $gaps ->
        [0] , no gap
        [one] , one gap of { $longest } h
       *[other] , { $gaps } gaps, the longest of { $longest } h
    }{ $doubtful ->
        [0] { "" }
       *[some] , { $doubtful } in doubt
    }{ $probes ->
        [none] { "" }
       *[some] ; { $probes }
    }{ $asked ->
        [none] .
       *[some] . Asked: { $asked }.
    }
log_not_read = Not read: { LIST($files, most: 4) }.
log_probe = { $probe }: { $parts } { $how ->
        [heading] by the heading
        [above] by a line above
        [unit_column] by the column of units
        [season_toml] by season.toml
        [answer] as you answered
       *[values] by the values
    }
log_more_probes = { $more ->
        [one] one more probe
       *[other] { $more } more probes
    }
log_quantity = { $quantity ->
        [temp] { $unit ->
            [C] °C
            [F] °F
            [K] K
           *[other] °C and °F
        }
        [rh] humidity
        [wet_bulb] humidity from the wet bulb
       *[dew_point] humidity from the dew point
    }
log_asked = { $code ->
        [log_machine] its machine
        [log_column] what its columns are
        [log_unit] its unit
        [log_scale] its decimal mark
        [log_encoding] its letters
        [log_zone] its time zone
        [log_clock] its clock
       *[log_date_order] its dates
    }
logs_more = { $more ->
        [one] One more file or group of files
       *[other] { $more } more files or groups of files
    }: hatchkit check FOLDER --full.
question_readings = { $rows ->
        [one] One reading depends on it.
       *[other] { $rows } readings depend on it.
    }
value_temp_C = temperature in °C
value_temp_F = temperature in °F
value_temp_K = temperature in K
value_rh = humidity in %
value_not_used = not used
value_dmy = day, month, year
value_mdy = month, day, year
value_ymd = year, month, day
value_divided_by_10 = divided by 10
value_divided_by_100 = divided by 100
value_divided_by_1000 = divided by 1,000
value_put_right = put right by hand
value_kept_old_time = never put right
value_as_it_stands = as it stands
value_none_of_these = none of these

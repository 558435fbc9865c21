# Les fichiers des enregistreurs, tels que hatchkit check les montre.

logs_head = Les fichiers des enregistreurs
log_read = { COUNT($files) ->
        [one] { $files }
       *[other] { COUNT($files) } fichiers ({ LIST($files, most: 1) })
    } : { $machine }{ $known ->
        [none] { "" }
        [answer] {" "}(selon votre réponse)
        [season_toml] {" "}(selon season.toml)
        [file_name] {" "}(selon le nom du fichier)
        [probe_name] {" "}(selon le nom de la sonde)
        [only_one] {" "}(la seule couveuse)
       *[dates] {" "}(selon les dates de ses œufs)
    }, { MINUTE($start) } à { MINUTE($end) }, { $readings ->
        [1] une mesure
       *[other] toutes les { $step } min, { $readings } mesures
    }{ $gaps ->
        [0] , sans trou
        [1] , un trou de { $longest } h
       *[other] , { $gaps } trous, le plus long de { $longest } h
    }{ $doubtful ->
        [0] { "" }
       *[some] , { $doubtful } douteuses
    }{ $probes ->
        [none] { "" }
       *[some] ; { $probes }
    }{ $asked ->
        [none] .
       *[some] . Demandé : { $asked }.
    }
log_not_read = Non lu : { LIST($files, most: 4) }.
log_probe = { $probe } : { $parts } { $how ->
        [heading] selon le titre
        [above] selon une ligne au-dessus
        [unit_column] selon la colonne des unités
        [season_toml] selon season.toml
        [answer] selon votre réponse
       *[values] selon les valeurs
    }
log_more_probes = { $more ->
        [1] une sonde de plus
       *[other] { $more } sondes de plus
    }
log_quantity = { $quantity ->
        [temp] { $unit ->
            [C] °C
            [F] °F
            [K] K
           *[other] °C et °F
        }
        [rh] humidité
        [wet_bulb] humidité d’après le thermomètre mouillé
       *[dew_point] humidité d’après le point de rosée
    }
log_asked = { $code ->
        [log_machine] sa couveuse
        [log_column] ce que sont ses colonnes
        [log_unit] son unité
        [log_scale] sa virgule
        [log_encoding] ses lettres
        [log_zone] son fuseau horaire
        [log_clock] son horloge
       *[log_date_order] ses dates
    }
logs_more = { $more ->
        [1] Un fichier ou groupe de fichiers de plus
       *[other] { $more } fichiers ou groupes de fichiers de plus
    } : hatchkit check DOSSIER --full.
question_readings = { $rows ->
        [1] Une mesure en dépend.
       *[other] { $rows } mesures en dépendent.
    }
value_temp_C = température en °C
value_temp_F = température en °F
value_temp_K = température en K
value_rh = humidité en %
value_not_used = non utilisé
value_dmy = jour, mois, année
value_mdy = mois, jour, année
value_ymd = année, mois, jour
value_divided_by_10 = divisé par 10
value_divided_by_100 = divisé par 100
value_divided_by_1000 = divisé par 1 000
value_put_right = remise à l’heure à la main
value_kept_old_time = jamais remise à l’heure
value_as_it_stands = tel quel
value_none_of_these = rien de cela

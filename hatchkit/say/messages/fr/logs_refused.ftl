# Pourquoi un fichier ne peut pas être lu comme enregistrement.

log_refused = { $name } ne peut pas être lu comme enregistrement d’une sonde : { $why }.
refuse_damaged = il est endommagé
refuse_no_text = ce n’est pas un texte
refuse_empty = le fichier est vide
refuse_tail = il commence comme un enregistrement, mais à partir d’environ { $percent } % de sa longueur la plupart des lignes n’ont pas de mesure ; coupez le reste dans un éditeur de texte
refuse_too_many_lines = il a plus de { $millions } millions de lignes ; partagez-le par mois
refuse_too_large = il dépasse { $mb } Mo ; partagez-le par mois
refuse_unpacks_too_large = décompressé, il dépasse { $mb } Mo ; partagez-le par mois
refuse_no_ordinary_file = il ne peut pas être ouvert (ce n’est pas un fichier ordinaire)
refuse_not_opened = il ne peut pas être ouvert ({ $why })
refuse_archive = c’est une archive endommagée
refuse_archive_locked = c’est une archive endommagée, un classeur endommagé, ou il est fermé par un mot de passe
refuse_archive_empty = l’archive ne contient aucun fichier
refuse_no_rows = la base de données ne contient aucune table avec des lignes
refuse_no_sheet = le classeur n’a pas de feuille
refuse_database = c’est une base de données endommagée ou verrouillée ({ $why })
refuse_pdf = c’est un PDF, pas un fichier de texte ; exportez l’enregistrement en CSV
refuse_bytes = il contient des octets qui ne sont pas du texte
refuse_lines = ses lignes ne peuvent pas être distinguées ({ $why })
refuse_no_number = aucune ligne n’a de nombre dans les colonnes de température ou d’humidité
refuse_channel = { $file } n’a pas de voie '{ $channel }' ; il a { $there }.
refuse_temp_unit = temp_unit est '{ $unit }' ; écrivez "C", "F" ou "K".
refuse_stretches = sa colonne { $column } contient des tranches d’une heure ({ $example }) et pas de moments ; écrivez l’heure à laquelle chacune commence
refuse_minutes = sa colonne { $column } contient des nombres comme { PLAIN($example) }, qui ne sont pas des heures mais peuvent être des minutes depuis minuit ; écrivez les heures comme 07:30
refuse_hour_parts = sa colonne { $column } contient des nombres comme { $example }, qui peuvent être des heures et minutes ou des parties d’heure ; écrivez les heures comme 07:30
refuse_twelve_hours = son horloge montre les heures 1 à 12 et ni am ni pm, de sorte que matin et soir ne se distinguent pas ; exportez l’enregistrement avec une horloge de 24 heures
refuse_written_days = ses nombres comme { $example } peuvent être des jours avec l’heure ({ $form }) ou des secondes depuis 1970 ; écrivez-les comme 2025-09-11 22:05
refuse_commas = une virgule sépare à la fois ses colonnes et ses décimales, sans guillemets, de sorte qu’on ne peut pas les distinguer ; exportez-le avec des points-virgules ou des points décimaux
refuse_many_columns = il a { $count } colonnes de température ou d’humidité, plus que les { $most } que hatchkit lit ; exportez-en quelques-unes
refuse_no_measure = il a des dates et des heures mais pas de colonne de température ou d’humidité{ $headings ->
        [none] { "" }
       *[known] {" "}; ses titres sont { $headings }
    }
refuse_days_without_measure = il a des dates sans heure, et pas de colonne nommée température ou humidité
refuse_several_kinds = sa colonne { $column } contient des valeurs de plusieurs sortes, et ni unité ni nom ne dit lesquelles sont des températures ; écrivez l’unité ou la grandeur à côté de chaque valeur
refuse_nothing_below = la ligne { PLAIN($line) } a les titres d’un enregistrement, mais aucune ligne dessous n’a de date avec un nombre ; la première est la ligne { PLAIN($below) } : "{ $example }"
refuse_no_reading = aucune ligne n’a à la fois une date avec l’heure et un nombre ; { $lacks ->
        [number] il y a des dates sans nombre à côté
        [date] il y a des nombres sans date
       *[both] il n’y a ni l’un ni l’autre
    }{ $line ->
        [none] { "" }
       *[known] , comme à la ligne { PLAIN($line) } : "{ $example }"
    }
refuse_no_day = ses lignes ont des heures et pas de date, et ni les lignes au-dessus ni le nom du fichier ne nomment un jour ; écrivez le jour dans le nom du fichier
refuse_no_start = ses heures comptent depuis le début de l’enregistrement ({ $column ->
        [none] une mesure après l’autre
       *[named] { $column }
    }), et les lignes au-dessus des mesures ne disent pas quand c’était ; écrivez en tête une ligne comme Start: 2026-03-05 18:30
refuse_count_unit = ses heures comptent depuis le début de l’enregistrement, et le titre { $column ->
        [none] de cette colonne
       *[named] { $column }
    } ne dit pas si c’est en secondes, minutes ou heures ; écrivez par exemple "{ $column ->
        [none] Time
       *[named] { $column }
    } (min)"
refuse_two_orders = ses dates changent d’ordre : "{ $one }" et celles autour sont écrites { WORD($first, kind: "value") }, "{ $two }" et celles autour { WORD($second, kind: "value") } ; partagez le fichier là où l’ordre change
refuse_backwards = ses heures vont à rebours et sont sans date, de sorte que le jour ne peut pas être connu ; retournez les lignes, ou écrivez la date à côté de chacune
refuse_hours_or_minutes = sa colonne { $column } contient 0 à { $most } en un jour, ce qui peut être des heures ou des minutes après minuit ; nommez la colonne hour, ou écrivez les heures comme 00:07
refuse_no_time = il a des dates sans heure
refuse_no_time_several = il a des dates sans heure, et plusieurs lignes par jour
refuse_no_date_column = sa colonne { $column } contient des nombres comme { $example }, qui ne se lisent pas comme une date ; écrivez-les comme 2025-09-11
refuse_no_date = aucune ligne n’a de date, et les lignes au-dessus des mesures ne disent pas { $lacks ->
        [start] quand il a commencé ni combien dure un pas
       *[step] combien dure un pas, et aucun titre comme Elapsed (min) ne dit dans quelle colonne le temps est compté
    }
refuse_no_stamp = aucune colonne n’a de dates avec l’heure

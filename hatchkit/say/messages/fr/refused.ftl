# Pourquoi une question est refusée.

no_column = Les couvées n’ont pas de colonne « { $column } » selon laquelle les répartir ; il y a, par exemple, { LIST($there) }.
one_column = Les couvées se répartissent selon une seule colonne à la fois : by='{ $column }', pas by={ $given }. Pour deux ensemble, ajoutez une colonne qui contient les deux. Il y a, par exemple, { LIST($there) }.
clears_out_of_order = Les clairs ouverts doivent être entre 1 et le nombre de clairs, ceux-ci au plus les œufs mis, et les morts parmi eux au plus les ouverts.
no_hatch_to_chart = Pas encore de couvée finie à tracer.
no_such_stage = Il n’y a pas de stade « { $stage } » ; il y a { LIST($known) }.
stage_not_counted = Aucune couvée finie n’a de compte complet ({ WORD($stage, kind: "loss") }) : rien à tracer.
no_eggs_to_chart = Aucune couvée finie n’a d’œufs à tracer ({ WORD($species, kind: "species") }).
no_interval_method = Il n’y a pas de méthode d’intervalle « { $method } » ; on connaît { LIST($known) }.
count_beyond_total = Un nombre doit se trouver entre 0 et le total dont il est tiré.
share_without_eggs = Une part demande au moins une couvée avec des œufs.
own_level_lacks = Un niveau propre demande species, stage et une part share entre 0 et 1, pas { $given }.
own_level_of = Le dénominateur d’un niveau propre est set, fertile ou transferred, pas { $given }.
too_few_stretches = Une forme en deux phases demande des morts dans au moins 5 périodes différentes ; avec moins de mirages, les relevés ne donnent que l’estimation simple.
ages_uneven = after_day, by_day et eggs doivent avoir la même longueur.
ages_without_egg = Les âges de mort demandent au moins un œuf.
ages_backward = Chaque intervalle doit finir après son début : by_day au-dessus de after_day.
no_limits = Il n’y a pas de limites de stades « { $name } » ; on connaît { LIST($known) }.
limits_with_holes = Des limites de stades propres doivent commencer au jour 0 et se suivre sans trou, par exemple early 0 à 7, mid 7 à 14, late 14 à 21.
no_such_split = Les stades vont selon development ou candling, pas « { $given } ».
no_such_air = L’air peut être { LIST($known) } ; « { $air } » est inconnu.
readings_in_disorder = Les relevés doivent être dans l’ordre du temps avant que la température de l’œuf soit calculée.
no_such_unit = Les températures se montrent en C ou F, pas en « { $unit } ».
not_one_of = { $name } « { $given } » est inconnu ; on connaît { LIST($known) }.
whole_number = { $name } doit être un nombre entier à partir de { PLAIN($least) }, non { $given }.
end_not_known = On ne sait rien de la fin de la couvée « { $batch } » ; aucune cause ne peut donc être pesée.
set_time_none = « { $given } » n’est pas un moment de mise en incubation ; écrivez-le comme 2026-04-03 18:00, à votre heure locale.
set_time_misread = « { $given } » { $why ->
        [year_odd] a une année qui ne peut pas être juste
        [year_none] n’a pas d’année
       *[no_date] n’est pas une date
    } ; écrivez comme 2026-04-03 18:00, à votre heure locale.
set_time_two_ways = « { $given } » peut être le { DATE($one) } ou le { DATE($other) } : écrivez { $write_one } ou { $write_other }, ou mettez [sheets] day_first = true (ou false) dans season.toml.
set_time_skipped = { HOUR($time) } le { DAY($time) } n’existe pas à { $zone } : les horloges avancent alors. Donnez une heure que l’horloge montre.
set_time_twice = { HOUR($time) } le { DAY($time) } vient deux fois à { $zone } : les horloges reculent cette nuit-là. Donnez une heure qui ne vient qu’une fois.
plan_no_species = La saison n’a pas de couvée ; dites donc pour quelle espèce est le plan (species=...).
plan_sure = sure est une probabilité entre 0 et 1 (par exemple 0.9), non { $given }.
no_end_on_record = Aucune couvée n’a sa fin notée ; on ne peut dire ce que la saison a perdu.
no_batch_yet = Il n’y a pas encore de couvée dans cette saison, donc pas d’éclosion à examiner.
no_end_to_look_at = Aucune couvée de cette saison n’a sa fin notée : nommez la couvée à examiner.
not_an_answer = { $path } n’est pas un fichier de réponse écrit par hatchkit ({ $why }).
folder_holds_other = { $path } contient autre chose, qui serait remplacé : nommez un nouveau dossier.
folder_not_empty = { $path } n’est pas vide ; nommez un nouveau dossier.
answer_in_season = La réponse ne doit pas se trouver dans le dossier de la saison ; nommez un fichier ailleurs.
planted_often = { $cause } ne peut être placé { $times } fois ; ceux-ci le peuvent : { LIST($known) }.
lesson_batches = Une saison de cours demande au moins deux couvées : l’une sur laquelle on interroge, l’autre pour comparer.
no_exercise = Il n’y a pas d’exercice « { $name } » ; le premier mot après check( doit rester tel quel.
no_folder_for = Il n’y a pas de dossier { $folder } où écrire { $name } ; créez-le d’abord.
marks_in_folder = { $path } est un dossier ; nommez un fichier pour les notes.
not_marks = { $path } existe et n’est pas un fichier de notes ; il n’est pas écrasé. Nommez un nouveau fichier.
no_answer_book = { $folder } ne contient pas de corrigé ({ $book }) ; ce n’est pas un dossier de cours.
answer_book_unread = { $path } ne peut être lu ; remettez le fichier que hatchkit a écrit.
answer_book_lacks = { $path } n’a pas de colonne { LIST($columns) } : un autre programme l’a réenregistré, ou un hatchkit plus ancien l’a écrit. Remettez le fichier que hatchkit a écrit, ou refaites le cours.
not_there = { $path } n’existe pas.
no_answer_sheet = Il n’y a pas de feuille de réponses dans { $path } ; c’est un tableau aux en-têtes { LIST($headings) }.{ COUNT($told) ->
        [0] { "" }
       *[other] { " " }Trouvé : { LIST($told) }
    }

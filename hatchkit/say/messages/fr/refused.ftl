# Pourquoi une question est refusée.

no_level = Il n’y a pas de niveau « { $level } » ; on connaît { LIST($known) }.
no_column = Les couvées n’ont pas de colonne « { $column } » selon laquelle les répartir ; il y a, par exemple, { LIST($there) }.
one_column = Les couvées se répartissent selon une seule colonne à la fois : by='{ $column }', pas by={ $given }. Pour deux ensemble, ajoutez une colonne qui contient les deux. Il y a, par exemple, { LIST($there) }.
clears_out_of_order = Les clairs ouverts doivent être entre 1 et le nombre de clairs, ceux-ci au plus les œufs mis, et les morts parmi eux au plus les ouverts.
no_hatch_to_chart = Pas encore de couvée finie à tracer.
no_such_stage = Il n’y a pas de stade « { $stage } » ; il y a { LIST($known) }.
stage_not_counted = Aucune couvée finie n’a de compte complet ({ WORD($stage, kind: "loss") }) : rien à tracer.
no_eggs_to_chart = Aucune couvée finie n’a d’œufs à tracer ({ WORD($species, kind: "species") }).
no_interval_method = Il n’y a pas de méthode d’intervalle « { $method } » ; on connaît { LIST($known) }.
count_beyond_total = Un nombre doit se trouver entre 0 et le total dont il est tiré.
share_without_eggs = Une part demande au moins une couvée avec des œufs.
own_level_lacks = Un niveau propre demande species, stage et une part share entre 0 et 1, pas { $given }.
own_level_of = Le dénominateur d’un niveau propre est set, fertile ou transferred, pas { $given }.
too_few_stretches = Une forme en deux phases demande des morts dans au moins 5 périodes différentes ; avec moins de mirages, les relevés ne donnent que l’estimation simple.
ages_uneven = after_day, by_day et eggs doivent avoir la même longueur.
ages_without_egg = Les âges de mort demandent au moins un œuf.
ages_backward = Chaque intervalle doit finir après son début : by_day au-dessus de after_day.
no_limits = Il n’y a pas de limites de stades « { $name } » ; on connaît { LIST($known) }.
limits_with_holes = Des limites de stades propres doivent commencer au jour 0 et se suivre sans trou, par exemple early 0 à 7, mid 7 à 14, late 14 à 21.
no_such_split = Les stades vont selon development ou candling, pas « { $given } ».
no_such_air = L’air peut être { LIST($known) } ; « { $air } » est inconnu.
readings_in_disorder = Les relevés doivent être dans l’ordre du temps avant que la température de l’œuf soit calculée.
no_such_dose = Il n’y a pas de dose « { $dose } » ; choisissez parmi { LIST($known) }.
no_such_unit = Les températures se montrent en C ou F, pas en « { $unit } ».

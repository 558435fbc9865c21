# Le cadre de chaque page, et ce qui est commun à tous les tableaux.

page_answer = La réponse
page_how_sure = Est-ce sûr ?
page_do_now = Que faire maintenant
page_contents = Sur cette page
page_more = Plus
page_records = Voir les relevés
page_unknown = Ce que l’on ne sait pas
page_care = Attention
page_made = Fait par hatchkit { $version } le { DAY($today) }.

# À quel point une réponse est sûre.
how_sure_sure = (sûr)
how_sure_likely = (probable)
how_sure_guess = (une supposition parmi d’autres)
how_sure_cannot_tell = (les relevés ne permettent pas de le dire)

shown_none = inconnu
shown_share = { SHARE($share) }
shown_share_range = { SHARE($share) } ({ SHARE($low) } à { SHARE($high) })
shown_step = { STEP($step) }
shown_degrees = { DEGREES($degrees) }
shown_time = { MINUTE($time) }
shown_number = { TENTH($number) }

# La liste du carnet 2.
form_batch = Lot :
form_batch_hatched = { $batch } : { $hatched } éclos sur { $set }

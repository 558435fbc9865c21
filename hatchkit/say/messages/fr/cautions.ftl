# Précautions montrées partout.
take_care = Attention
caution_machine_1 = Courant du secteur et eau : débranchez la couveuse avant de la remplir, de la vider ou de la nettoyer, tenez prises et fils loin des surfaces mouillées, et branchez-la sur une prise protégée par un disjoncteur différentiel.
caution_machine_2 = En cas de coupure de courant, pas de flamme près d’une couveuse : beaucoup sont en mousse, qui brûle. Un couvercle fermé et des couvertures gardent la chaleur plus longtemps qu’on ne croit.
caution_opening_eggs_1 = Mirez chaque œuf non éclos avant de l’ouvrir et traitez-le comme vivant jusqu’à preuve du contraire.
caution_opening_eggs_2 = Les œufs pourris éclatent. Ouvrez les œufs dehors ou dans un endroit bien aéré, sans courant d’air vers vous, dans un plat ou un sac, avec des gants et une protection des yeux, loin de tout aliment ; ne les secouez ni ne les chauffez jamais. Tenez à l’écart les enfants et les personnes aux défenses affaiblies.
caution_opening_eggs_3 = Lavez-vous les mains au savon après les œufs, les oiseaux ou leur matériel : des oiseaux d’apparence saine et des œufs propres peuvent porter des salmonelles.
caution_killing_1 = Les embryons peuvent ressentir la douleur en fin d’incubation. Tuer un embryon, un poussin ou un bêché vivant demande des mains exercées, d’une façon permise par la loi de votre pays ; demandez à un vétérinaire. hatchkit montre le jour publié le plus strict à partir duquel la prudence s’impose (deux tiers de l’incubation).
caution_disease_1 = Des morts soudaines ou inhabituelles, d’œufs, de poussins ou de poules, sont l’affaire d’un vétérinaire et, quand les oiseaux d’un lieu meurent ensemble, de l’autorité sanitaire de votre pays. hatchkit ne peut reconnaître aucune maladie.
caution_hatch_1 = Un œuf éclaté répand des bactéries dans toute la couveuse : retirez tôt les œufs pourris et nettoyez aussitôt.
caution_hatch_2 = Les enfants se lavent les mains sous les yeux d’un adulte après les poussins et les œufs ; on n’embrasse pas les poussins et on ne les serre pas contre le visage.
caution_storage_1 = Ne mettez pas d’œufs fêlés ou sales, et ne lavez pas des œufs chauds dans une eau plus froide : elle attire les germes à travers la coquille.
caution_cleaning_1 = Pas de formol à la maison : il est toxique et tenu pour cancérogène. Suivez l’étiquette de tout désinfectant, aérez la pièce, ne mélangez jamais de produits, et débranchez d’abord la couveuse.

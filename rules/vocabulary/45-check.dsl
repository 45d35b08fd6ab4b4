# Sentences that set a proposal beside what is asked. "It" and "its" lean on the layer named before.

# --- what is proposed, and what is not
[condition][]A layer is proposed as {kind}=$thing : Fact( says == "proposed layer: {kind}" )
[condition][]A layer is proposed=$thing : Fact( name == "proposed layer" )
[condition][]What is missing is a kind of {family}=Fact( about == $thing.about, says == "missing family: {family}" )
[condition][]What is missing is no kind of {family}=Fact( name == "missing family", about == $thing.about, text != "{family}" )
[condition][]What is missing is {layer}=$thing : Fact( says == "missing layer: {layer}" )
[condition][]Something that is asked for is missing=$thing : Fact( name == "missing layer" )
[condition][]A membrane is proposed=exists Fact( says == "proposed layer: decoupling membrane" )
[condition][]What it carries is not missing as well=Fact( about == $thing.about, says == "missing with what it carries: no" )
[condition][]Nothing of the same name lies beside it=Fact( about == $thing.about, says == "missing beside its like: no" )
[condition][]No fixing says that it is there=Fact( about == $thing.about, says == "missing but for its fixing: no" )
[condition][]A fixing says that it is there=Fact( about == $thing.about, says == "missing but for its fixing: yes" )

# --- its place
[condition][]It is what is asked for there=Fact( about == $thing.about, says == "fit: is" )
[condition][]It does as well as what is asked for there=Fact( about == $thing.about, says == "fit: serves as" )
[condition][]It takes the place of what is asked for there=Fact( about == $thing.about, says == "fit: stands in for" )
[condition][]Nothing asks for it=Fact( about == $thing.about, says == "fit: not asked" )
[condition][]It comes out of its turn=Fact( about == $thing.about, says == "in its turn: no" )
[condition][]It is any kind of {family}=Fact( about == $thing.about, says == "layer family: {family}" )
[condition][]It is a board or a sheet=Fact( about == $thing.about, name == "layer family", text in ( "board", "deck" ) )
[condition][]It is screwed into the old deck=Fact( about == $thing.about, name == "part", text in ( "rigid-board", "foam-board", "ply-overlay" ) )
[condition][]It does the work of a liquid seal=Fact( about == $thing.about, name == "part", text in ( "tanking", "cement-tanking", "resin-tanking" ) )
[condition][]It does the work of {layer}=Fact( about == $thing.about, says == "part: {layer}" )
[condition][]It lies straight on {family}=Fact( about == $thing.about, says == "lies on: {family}" )
[condition][]It suits what lies beside it=not Fact( about == $thing.about, name == "beside its neighbours" )
[condition][]No {work} lies over it=not Fact( about == $thing.about, says == "lies under: {work}" )
[condition][]The proposed joint is more than its {range}=$joint : Fact( name == "proposed joint", about == "" ) Fact( name == "{range}", about == $thing.about, number < $joint.number )
[condition][]The proposed joint is less than its {range}=$joint : Fact( name == "proposed joint", about == "" ) Fact( name == "{range}", about == $thing.about, number > $joint.number )
[condition][]Its {name} is more than its {other}=$itsGreater : Fact( name == "{name}", about == $thing.about ) Fact( name == "{other}", about == $thing.about, number < $itsGreater.number )

# --- how much of it
[condition][]It is thinner than asked=$thin : Fact( name == "proposed thickness", about == $thing.about ) Fact( name == "thickness asked", about == $thing.about, number > $thin.number )
[condition][]It is thicker than asked by more than {figure}=$thick : Fact( name == "proposed thickness", about == $thing.about ) $slack : Figure( name == "{figure}" ) Fact( name == "thickness asked", about == $thing.about, number < $thick.number - $slack.number )
[condition][]It is thicker than asked=$thicker : Fact( name == "proposed thickness", about == $thing.about ) Fact( name == "thickness asked", about == $thing.about, number < $thicker.number )
[condition][]It is to touch less than asked=$touch : Fact( name == "proposed coverage", about == $thing.about ) Fact( name == "contact asked", about == $thing.about, number > $touch.number )
[condition][]It is left for less time than asked=$left : Fact( name == "proposed wait", about == $thing.about ) Fact( name == "wait asked", about == $thing.about, number > $left.number )
[condition][]It is combed with a smaller notch than asked=$comb : Fact( name == "proposed notch", about == $thing.about ) Fact( name == "notch asked", about == $thing.about, number > $comb.number )
[condition][]Its {scale} is short of what is asked=$asked : Fact( about == $thing.about, says == "{scale} offered: short" )
[condition][]Its {scale} is higher than asked=$asked : Fact( about == $thing.about, says == "{scale} offered: more" )
[condition][]Its {scale} is asked for and not said=$asked : Fact( about == $thing.about, says == "{scale} offered: not said" )
[condition][]The {scale} is short of what is asked=$asked : Fact( about == "", says == "{scale} offered: short" )
[condition][]The {scale} is asked for and not said=$asked : Fact( about == "", says == "{scale} offered: not said" )

# --- its screws
[condition][]Its screw would come out below the deck=$driven : Fact( name == "screw length", about == $thing.about ) Fact( name == "screw longest", about == "", number < $driven.number )
[condition][]A longer stocked screw would fit=$short : Fact( name == "screw length", about == $thing.about ) Fact( name == "board screw", about == "", number > $short.number )
[condition][]It is nailed or stapled=Fact( name == "proposed fixing", about == $thing.about, text in ( "nailed", "stapled" ) )
[condition][]A screw is said to go through it=Fact( name == "proposed fixing", about == $thing.about, text in ( "bonded and screwed", "screwed only" ) )

# --- the whole
[condition][]The way it goes is ruled out=$thing : Fact( name == "way ruled out" )
[condition][]As proposed it is ruled out=$thing : Fact( name == "proposal ruled out" )
[condition][]The floor must not be tiled as it is=$thing : Fact( name == "floor stopped" )
[condition][]One piece of work comes before another that it must follow=$thing : Fact( name == "work out of turn" )
[condition][]The order of work has {work} after {other}=$late : Fact( name == "place in the work", about == "{work}" ) Fact( name == "place in the work", about == "{other}", number < $late.number )
[condition][]The order of work leaves out {work}=Fact( name == "left out of the work", about == "{work}" )
[condition][]A gap all round is called for=exists Caution( wording == "movement-perimeter" )
[condition][]A compound is to be poured=exists Fact( says == "layer family: leveller" )
[condition][]The joint is narrower than asked=$narrow : Fact( name == "proposed joint", about == "" ) Fact( name == "least joint", about == "", number > $narrow.number )

# --- exceptions for one layer; these stand last among the conditions
[condition][]unless {id} says so of it=not Finding( rule == "{id}", about == $thing.about )

# --- what follows
[consequence][]Judge that it agrees, {wording}=find( "agrees", "{wording}", $thing.about )
[consequence][]Judge that it must not be laid so, {wording}=find( "must not", "{wording}", $thing.about )
[consequence][]Judge that it falls short, {wording}=find( "short of", "{wording}", $thing.about )
[consequence][]Judge that it goes beyond, {wording}=find( "more than needed", "{wording}", $thing.about )
[consequence][]Judge that it comes at the wrong time, {wording}=find( "wrong order", "{wording}", $thing.about )
[consequence][]Judge that it is missing, {wording}=find( "missing", "{wording}", $thing.about )
[consequence][]Judge that it is not said, {wording}=find( "not said", "{wording}", $thing.about )
[consequence][]Judge that the whole must not be built so, {wording}=find( "must not", "{wording}", "" )
[consequence][]Judge that the whole falls short, {wording}=find( "short of", "{wording}", "" )
[consequence][]Judge that the whole does not say, {wording}=find( "not said", "{wording}", "" )

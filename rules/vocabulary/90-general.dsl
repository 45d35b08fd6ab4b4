# Sentences that speak of any fact by its name. Themed files with lower numbers come first and may say the same more naturally.
# A fact's name is what rules/facts calls it ("called"), or what a formula or another rule concluded.

# --- what is and is not known
[condition][]The {name} is unknown=Unknown( name == "{name}", about == "" )
[condition][]The {name} is known=Fact( name == "{name}", about == "" )
[condition][]The {name} is not known=not Fact( name == "{name}", about == "" )

# --- numbers against figures; "Also the" lets one rule compare twice
[condition][]Also the {name} is below {figure}=$alsoLow : Fact( name == "{name}" ) Figure( name == "{figure}", number > $alsoLow.number )
[condition][]Also the {name} is above {figure}=$alsoHigh : Fact( name == "{name}" ) Figure( name == "{figure}", number < $alsoHigh.number )
[condition][]Also the {name} is at least {figure}=$alsoLeast : Fact( name == "{name}" ) Figure( name == "{figure}", number <= $alsoLeast.number )
[condition][]Also the {name} is at most {figure}=$alsoMost : Fact( name == "{name}" ) Figure( name == "{figure}", number >= $alsoMost.number )
[condition][]The {name} is below {figure}=$low : Fact( name == "{name}", about == "" ) Figure( name == "{figure}", number > $low.number )
[condition][]The {name} is above {figure}=$high : Fact( name == "{name}", about == "" ) Figure( name == "{figure}", number < $high.number )
[condition][]The {name} is at least {figure}=$least : Fact( name == "{name}", about == "" ) Figure( name == "{figure}", number <= $least.number )
[condition][]The {name} is at most {figure}=$most : Fact( name == "{name}", about == "" ) Figure( name == "{figure}", number >= $most.number )
[condition][]The {name} is less than the {other}=$lesser : Fact( name == "{name}", about == "" ) Fact( name == "{other}", about == "", number > $lesser.number )
[condition][]The {name} is more than the {other}=$greater : Fact( name == "{name}", about == "" ) Fact( name == "{other}", about == "", number < $greater.number )

# --- one of several things: a door, a heavy item, a notch, a hole. "Its" leans on the thing named before.
[condition][]There is an? {thing} named=$thing : Fact( name == "{thing}" )
[condition][]Its {name} is unknown=Unknown( name == "{name}", about == $thing.about )
[condition][]Its {name} is below {figure}=$itsLow : Fact( name == "{name}", about == $thing.about ) Figure( name == "{figure}", number > $itsLow.number )
[condition][]Its {name} is above {figure}=$itsHigh : Fact( name == "{name}", about == $thing.about ) Figure( name == "{figure}", number < $itsHigh.number )
[condition][]Its {name} is at least {figure}=$itsLeast : Fact( name == "{name}", about == $thing.about ) Figure( name == "{figure}", number <= $itsLeast.number )
[condition][]Its {name} is at most {figure}=$itsMost : Fact( name == "{name}", about == $thing.about ) Figure( name == "{figure}", number >= $itsMost.number )
[condition][]Its {name} is less than its {other}=$itsLesser : Fact( name == "{name}", about == $thing.about ) Fact( name == "{other}", about == $thing.about, number > $itsLesser.number )
[condition][]Its {name} is not {value}=Fact( name == "{name}", about == $thing.about, text != "{value}" )
[condition][]Its {name} is {value}=Fact( about == $thing.about, says == "{name}: {value}" )

# --- the build-up under judgement
[condition][]The build-up lays no kind of {family}=not Laid( family == "{family}" )
[condition][]The build-up lays any kind of {family}=Laid( family == "{family}" )
[condition][]The build-up does not lay {layer}=not Laid( layer == "{layer}" )
[condition][]The build-up lays {layer}=Laid( layer == "{layer}" )

# --- exceptions by name; these stand last among the conditions
[condition][]except when {id} holds=not Conclusion( rule == "{id}" )

# --- any fact in words
[condition][]No {name} is {value}=not Fact( says == "{name}: {value}" )
[condition][]Any {name} is {value}=Fact( says == "{name}: {value}" )
[condition][]The {name} is not {value}=Fact( name == "{name}", about == "", text != "{value}" )
[condition][]The {name} is {value}=Fact( about == "", says == "{name}: {value}" )

# --- what follows
[consequence][]Assume its {name} is as {figure}=insertLogical( draft.assumeAs( "{name}", $thing.about(), "{figure}" ) );
[consequence][]Assume the {name} is as {figure}=insertLogical( draft.assumeAs( "{name}", "", "{figure}" ) );
[consequence][]Assume its {name} is {value}=insertLogical( draft.assume( "{name}", $thing.about(), "{value}" ) );
[consequence][]Assume the {name} is {value}=insertLogical( draft.assume( "{name}", "", "{value}" ) );
[consequence][]Conclude that the {name} is as {figure}=insertLogical( draft.concludeAs( "{name}", "", "{figure}" ) );
[consequence][]Conclude that its {name} is {value}=insertLogical( draft.conclude( "{name}", $thing.about(), "{value}" ) );
[consequence][]Conclude that the {name} is {value}=insertLogical( draft.conclude( "{name}", "", "{value}" ) );
[consequence][]Hold the work at that thing until {wording}=insertLogical( draft.hold( "{wording}", $thing.about() ) );
[consequence][]Hold the work until {wording}=insertLogical( draft.hold( "{wording}", "" ) );
[consequence][]Put right first at that thing {wording}=insertLogical( draft.remedy( "{wording}", $thing.about() ) );
[consequence][]Put right first {wording}=insertLogical( draft.remedy( "{wording}", "" ) );
[consequence][]Warn of danger at that thing {wording}=insertLogical( draft.danger( "{wording}", $thing.about() ) );
[consequence][]Warn of danger {wording}=insertLogical( draft.danger( "{wording}", "" ) );
[consequence][]Advise care at that thing {wording}=insertLogical( draft.care( "{wording}", $thing.about() ) );
[consequence][]Advise care {wording}=insertLogical( draft.care( "{wording}", "" ) );
[consequence][]Note at that thing {wording}=insertLogical( draft.note( "{wording}", $thing.about() ) );
[consequence][]Note {wording}=insertLogical( draft.note( "{wording}", "" ) );
[consequence][]Stop the work {wording}=insertLogical( draft.stop( "{wording}" ) );
[consequence][]Call it outside guidance {wording}=insertLogical( draft.outside( "{wording}" ) );
[consequence][]Offer {route} as {standing:the usual way|a fuller way|a lesser way}=insertLogical( draft.offer( "{route}", "{standing}" ) );
[consequence][]Rule the build-up out {wording}=insertLogical( draft.ruleOut( "{wording}" ) );
[consequence][]Suggest instead {wording}=insertLogical( draft.suggest( "{wording}" ) );
[consequence][]Lay {layer} of {figure}=insertLogical( draft.lay( "{layer}", "{figure}" ) );
[consequence][]Lay {layer}=insertLogical( draft.lay( "{layer}" ) );
[consequence][]Ask of {layer} at least class {grade}=insertLogical( draft.grade( "{layer}", "{grade}" ) );
[consequence][]Say of {layer} that {wording}=insertLogical( draft.say( "{layer}", "{wording}" ) );
[consequence][]Fix {layer} with {wording}=insertLogical( draft.fix( "{layer}", "{wording}" ) );
[consequence][]Bed {layer} with contact of {figure}=insertLogical( draft.cover( "{layer}", "{figure}" ) );
[consequence][]Aim for tile contact of {figure}=insertLogical( draft.target( "{figure}" ) );
[consequence][]Allow the time of the {name} for {step}=insertLogical( draft.allowAsFact( "{step}", "{name}" ) );
[consequence][]Allow {figure} for each square metre for {step}=insertLogical( draft.allowByArea( "{step}", "{figure}" ) );
[consequence][]Settle with the client first {wording}=insertLogical( draft.beyond( "{wording}" ) );
[consequence][]Allow {figure} to cure for {step}=insertLogical( draft.allowForCure( "{step}", "{figure}" ) );
[consequence][]Allow {figure} for {step}=insertLogical( draft.allow( "{step}", "{figure}" ) );
[consequence][]Rank {order:\d+} by {criterion}=insertLogical( draft.rank( "{order}", "{criterion}" ) );

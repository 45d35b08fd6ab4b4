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
[condition][]Also the {name} is less than the {other}=$alsoLess : Fact( name == "{name}", about == "" ) Fact( name == "{other}", about == "", number > $alsoLess.number )
[condition][]The {name} is less than the {other}=$lesser : Fact( name == "{name}", about == "" ) Fact( name == "{other}", about == "", number > $lesser.number )
[condition][]The {name} is more than the {other}=$greater : Fact( name == "{name}", about == "" ) Fact( name == "{other}", about == "", number < $greater.number )

# --- one of several things: a door, a heavy item, a notch, a hole. "Its" leans on the thing named before.
[condition][]There is {article:a|an} {thing} named=$thing : Fact( name == "{thing}" )
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
[condition][]The {name} are {value}=Fact( about == "", says == "{name}: {value}" )
[condition][]The {name} is {value}=Fact( about == "", says == "{name}: {value}" )

# --- what follows
[consequence][]Assume its {name} is as {figure}=assumeAs( "{name}", $thing.about, "{figure}" )
[consequence][]Assume the {name} is as {figure}=assumeAs( "{name}", "", "{figure}" )
[consequence][]Assume its {name} is {value}=assume( "{name}", $thing.about, "{value}" )
[consequence][]Assume the {name} is {value}=assume( "{name}", "", "{value}" )
[consequence][]Conclude that the {name} is as {figure}=concludeAs( "{name}", "", "{figure}" )
[consequence][]Conclude that its {name} is {value}=conclude( "{name}", $thing.about, "{value}" )
[consequence][]Conclude that the {name} is {value}=conclude( "{name}", "", "{value}" )
[consequence][]Hold the work at that thing until {wording}=hold( "{wording}", $thing.about )
[consequence][]Hold the work until {wording}=hold( "{wording}", "" )
[consequence][]Put right first at that thing {wording}=remedy( "{wording}", $thing.about )
[consequence][]Put right first {wording}=remedy( "{wording}", "" )
[consequence][]Warn of danger at that thing {wording}=danger( "{wording}", $thing.about )
[consequence][]Warn of danger {wording}=danger( "{wording}", "" )
[consequence][]Advise care at that thing {wording}=care( "{wording}", $thing.about )
[consequence][]Advise care {wording}=care( "{wording}", "" )
[consequence][]Note at that thing {wording}=note( "{wording}", $thing.about )
[consequence][]Note {wording}=note( "{wording}", "" )
[consequence][]Stop the work {wording}=stop( "{wording}" )
[consequence][]Call it outside guidance {wording}=outside( "{wording}" )
[consequence][]Offer {route} as {standing:the usual way|a fuller way|a lesser way}=offer( "{route}", "{standing}" )
[consequence][]Rule the build-up out {wording}=ruleOut( "{wording}" )
[consequence][]Suggest instead {wording}=suggest( "{wording}" )
[consequence][]Lay {layer} of {figure}=layAs( "{layer}", "{figure}" )
[consequence][]Lay {layer}=lay( "{layer}" )
[consequence][]Ask of {layer} at least class {grade}=grade( "{layer}", "{grade}" )
[consequence][]Say of {layer} that {wording}=say( "{layer}", "{wording}" )
[consequence][]Fix {layer} with {wording}=fix( "{layer}", "{wording}" )
[consequence][]Bed {layer} with contact of {figure}=cover( "{layer}", "{figure}" )
[consequence][]Aim for tile contact of {figure}=target( "{figure}" )
[consequence][]Allow the time of the {name} for {step}=allowAsFact( "{step}", "{name}" )
[consequence][]Allow {figure} for each square metre for {step}=allowByArea( "{step}", "{figure}" )
[consequence][]Settle with the client first {wording}=beyond( "{wording}" )
[consequence][]Allow {figure} to cure for {step}=allowForCure( "{step}", "{figure}" )
[consequence][]Allow {figure} for {step}=allow( "{step}", "{figure}" )
[consequence][]Rank {order:number} by {criterion}=rank( "{order}", "{criterion}" )

# Sentences about solid floors, coverings, asbestos, moisture, cracks and floors of two bases.

# --- one of a few values, written out in the rule
[condition][]The {name} is either {one} or {two} or {three}=Fact( name == "{name}", about == "", text in ( "{one}", "{two}", "{three}" ) )
[condition][]The {name} is either {one} or {two}=Fact( name == "{name}", about == "", text in ( "{one}", "{two}" ) )
[condition][]The {name} is neither {one} nor {two}=Fact( name == "{name}", about == "", text not in ( "{one}", "{two}" ) )

# --- asbestos
[condition][]The house may be from the asbestos years=Fact( about == "", says == "asbestos age: possible" )
[condition][]Something on this floor may hold asbestos=Fact( about == "", says == "asbestos suspicion: yes" )
[condition][]A survey has cleared this floor of asbestos=Fact( about == "", says == "asbestos survey: clear" )
[condition][]A survey has found asbestos in this floor=Fact( about == "", says == "asbestos survey: found asbestos" )
[condition][]No survey has cleared this floor=not Fact( about == "", says == "asbestos survey: clear" )
[condition][]No survey has found any in it=not Fact( about == "", says == "asbestos survey: found asbestos" )

# --- where the floor lies and what is beneath
[condition][]There is a covering to take up=Fact( name == "covering", about == "" )
[condition][]Nobody says what lies beneath=Unknown( name == "base beneath", about == "" )
[condition][]The floor lies on or in the ground=Fact( name == "storey", about == "", text in ( "ground floor", "basement" ) )
[condition][]The floor does not lie on or in the ground=not Fact( name == "storey", about == "", text in ( "ground floor", "basement" ) )

# --- what state the base is in
[condition][]The surface crumbles or dusts=Fact( about == "", says == "weak surface: yes" )
[condition][]The skin of laitance still lies on it=Fact( about == "", says == "laitance: yes" )
[condition][]It sounds hollow=Fact( about == "", says == "hollow-sounding: yes" )
[condition][]There are hairline or fine cracks=Fact( name == "cracks", about == "", text in ( "hairline", "fine" ) )
[condition][]There are wide cracks=Fact( about == "", says == "cracks: wide" )
[condition][]The cracks still move=Fact( about == "", says == "cracks: moving" )
[condition][]The screed floats on insulation=Fact( about == "", says == "screed bond: floating" )
[condition][]The screed lies loose on a sheet=Fact( about == "", says == "screed bond: unbonded" )
[condition][]There is residue of {residue}=Fact( about == "", says == "residue: {residue}" )
[condition][]The base was uncovered from the start=not Fact( name == "covering", about == "" )
[condition][]The screed holds heating pipes=Fact( about == "", says == "piped screed: yes" )
[condition][]It has not been heated up once=Fact( about == "", says == "heating commissioned: no" )

# --- moisture
[condition][]A reading shows the floor dry=Fact( about == "", says == "measured dry: yes" )
[condition][]No reading shows the floor dry=not Fact( about == "", says == "measured dry: yes" )
[condition][]The floor counts as damp=Fact( about == "", says == "damp floor: yes" )
[condition][]There are signs of damp=Fact( about == "", says == "damp: yes" )
[condition][]There has been no moisture reading at all=Unknown( name == "floor humidity", about == "" ) Unknown( name == "CM reading", about == "" )
[condition][]There is no damp-proof membrane=Fact( about == "", says == "damp-proof membrane: absent" )
[condition][]The asphalt keeps the ground moisture out=Fact( about == "", says == "damp-proof membrane: the asphalt" )
[condition][]The old tiles keep the ground moisture out=Fact( about == "", says == "damp-proof membrane: the old tiles" )

# --- ways of building
[condition][]The tiles go onto the base that is there=Fact( name == "build-up", about == "", text in ( "straight onto the base", "membrane on the base" ) )
[condition][]The tiles go over the old tiles=Fact( about == "", says == "build-up: over the old tiles" )
[condition][]The old tiles come up=not Fact( about == "", says == "build-up: over the old tiles" )
[condition][]The asphalt stays=Fact( about == "", says == "build-up: asphalt kept" )
[condition][]The asphalt comes up=Fact( about == "", says == "build-up: asphalt taken up" )
[condition][]A new screed is laid=Fact( about == "", says == "build-up: new screed" )
[condition][]No new screed is laid=not Fact( about == "", says == "build-up: new screed" )

# --- floors of two bases
[condition][]Two bases meet in this room=Fact( name == "second deck", about == "" )
[condition][]The other base is timber=Fact( name == "second deck", about == "", text in ( "square-edged boards", "tongue-and-groove boards", "chipboard", "OSB", "plywood", "floating board floor" ) )
[condition][]The other base is solid=Fact( name == "second deck", about == "", text in ( "concrete slab", "cement:sand screed", "calcium sulfate screed", "mastic asphalt", "existing ceramic tiles" ) )

# --- dust: the remedies that make it
[condition][]Something has to be ground, scarified or broken out=Remedy( wording in ( "take-off-weak-skin", "sand-weak-calcium-sulfate", "sand-off-laitance", "grind-off-laitance", "roughen-power-floated", "mend-hollow-screed", "take-up-old-screed", "take-off-bitumen", "grind-cement-adhesive", "grind-off-paint", "draw-out-oil", "clean-and-roughen-old-tiles", "take-up-old-tiles", "take-up-asphalt", "stitch-wide-cracks" ) )

# Sentences about choosing between build-ups.
[condition][]The build-up takes up the floor that is there=Fact( name == "build-up", about == "", text in ( "new deck", "deck let in between the joists", "old tiles taken up", "asphalt taken up", "new screed" ) )
[condition][]The build-up fixes a new layer to the floor=Fact( name == "build-up", about == "", text in ( "rigid board overlay", "foam-core board overlay", "plywood and membrane" ) )
[condition][]The build-up only lies on what is there=Fact( name == "build-up", about == "", text in ( "straight onto the base", "membrane on the base", "membrane on the deck", "over the old tiles", "asphalt kept" ) )
[condition][]Some leaf must not be cut=exists Fact( says == "can be trimmed: no" )

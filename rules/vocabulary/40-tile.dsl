# Sentences about the tile, its bed, its joints, the air in the room and time. Longer sentences stand before shorter ones they begin like.

# --- the tile
[condition][]The tile is large, a plank or a slim panel=Fact( name == "tile format", text in ( "large", "plank", "slim panel" ) )
[condition][]The tile is a slim panel=Fact( says == "tile format: slim panel" )
[condition][]The tile is a mosaic=Fact( says == "tile format: mosaic" )
[condition][]The tile is not a mosaic=Fact( name == "tile format", text != "mosaic" )
[condition][]The tile is of ordinary size=Fact( says == "tile format: ordinary" )
[condition][]The tile is stone or cement-bound=Fact( name == "tile sort", text in ( "stone", "cement-bound" ) )
[condition][]The tile is of stone=Fact( says == "tile sort: stone" )
[condition][]The tile is not of stone=Fact( name == "tile sort", text != "stone" )
[condition][]The tile is of porous ceramic=Fact( says == "tile sort: ceramic" )
[condition][]The tile is of dense ceramic or glass=Fact( name == "tile sort", text in ( "dense ceramic", "glass" ) )
[condition][]The tile is of dense ceramic=Fact( says == "tile sort: dense ceramic" )
[condition][]The tile is cement-bound=Fact( says == "tile sort: cement-bound" )
[condition][]The tile is of glass=Fact( says == "tile sort: glass" )
[condition][]The tile is not of glass=Fact( name == "tile sort", text != "glass" )
[condition][]The tile is irregular=Fact( says == "irregular: yes" )
[condition][]The tile is true to size=not Fact( says == "irregular: yes" )
[condition][]The tiles differ in thickness=Fact( says == "gauged: no" )
[condition][]The tiles are of one thickness=not Fact( says == "gauged: no" )
[condition][]Moisture warps or stains the tile=Fact( says == "moisture-sensitive: yes" )
[condition][]A trace of moisture ruins the tile=Fact( says == "very moisture-sensitive: yes" )
[condition][]A trace of moisture does not ruin the tile=not Fact( says == "very moisture-sensitive: yes" )
[condition][]Colour shows through the tile=Fact( says == "light or translucent: yes" )
[condition][]The stone is often split by hand=Fact( name == "tile material", text in ( "natural stone", "slate", "sandstone" ) )
[condition][]The stone is often pale=Fact( name == "tile material", text in ( "natural stone", "marble", "limestone", "travertine", "sandstone", "stone mosaic" ) )
[condition][]The stone is sold sawn=Fact( name == "tile material", text in ( "marble", "limestone", "travertine", "granite" ) )
[condition][]Acid eats the tile=Fact( name == "tile material", text in ( "marble", "limestone", "travertine", "cement tile", "terrazzo", "stone mosaic", "natural stone" ) )
[condition][]The tile drinks water=Fact( name == "tile material", text in ( "limestone", "travertine", "sandstone", "slate", "natural stone", "marble", "stone mosaic", "cement tile", "terrazzo", "quarry" ) )
[condition][]The tiles are bonded by half their length=Fact( says == "pattern: half offset" )
[condition][]The tiles run across the room aslant=Fact( name == "pattern", text in ( "diagonal", "herringbone" ) )
[condition][]The tiles run square to the room=Fact( name == "pattern", text in ( "grid", "half offset", "third offset", "random" ) )

[condition][]The edges are ground=Fact( says == "tile edges: rectified" )
[condition][]The edges are pressed=Fact( says == "tile edges: pressed" )
[condition][]The edges are handmade=Fact( says == "tile edges: handmade" )

# --- what is not said
[condition][]Nobody has said how true the edges are=Unknown( name == "tile edges", about == "" )
[condition][]Nobody has said how much the tile bows=Unknown( name == "tile bow", about == "" )
[condition][]Nobody has said whether moisture harms the tile=Unknown( name == "moisture-sensitive", about == "" )
[condition][]Nobody has said how badly moisture harms the tile=Unknown( name == "very moisture-sensitive", about == "" )
[condition][]Nobody has said whether colour shows through the tile=Unknown( name == "light or translucent", about == "" )
[condition][]Nobody has said whether the stone is of one thickness=Unknown( name == "gauged", about == "" )
[condition][]Nobody has said how the tiles are laid out=Unknown( name == "pattern", about == "" )
[condition][]Nobody has said how fast the adhesive is to set=Unknown( name == "adhesive set", about == "" )
[condition][]Nobody has said how slippery the tile is=Unknown( name == "slip rating", about == "" )
[condition][]Nobody has said whether the sun lies on the floor=Unknown( name == "sunlit", about == "" )
[condition][]The base has not been searched for joints=Unknown( name == "existing joints", about == "" )
[condition][]The floor has not been searched for walls below=Unknown( name == "supporting wall below", about == "" )
[condition][]Nobody has read the air temperature=Unknown( name == "air temperature", about == "" )
[condition][]Nobody has read the floor temperature=Unknown( name == "floor temperature", about == "" )
[condition][]Nobody has read the air humidity=Unknown( name == "air humidity", about == "" )
[condition][]Nobody has said whether there is a draught=Unknown( name == "air speed", about == "" )
[condition][]Nobody has said whether the sun shines on the work=Unknown( name == "sun on the work", about == "" )
[condition][]Nobody has said whether the heating is on=Unknown( name == "heating running", about == "" )

# --- the floor and the room
[condition][]The floor is of timber or floats=Fact( name == "base family", text in ( "timber", "floating" ) )
[condition][]The floor is of timber=Fact( says == "base family: timber" )
[condition][]The floor is solid=Fact( says == "base family: solid" )
[condition][]Heating warms the floor=Fact( says == "heated: yes" )
[condition][]No heating warms the floor=not Fact( says == "heated: yes" )
[condition][]The heating is there already=Fact( name == "heating", text in ( "water pipes in screed" ) )
[condition][]The heating is on during the work=Fact( says == "heating running: yes" )
[condition][]No shower water runs over the floor=not Fact( says == "wetness: soaked" )
[condition][]Shower water runs over the floor=Fact( says == "wetness: soaked" )
[condition][]The floor is seldom wet=Fact( says == "wetness: seldom wet" )
[condition][]Bare wet feet cross the floor=Fact( name == "wetness", text in ( "often wet", "soaked" ) )
[condition][]The base takes a primer of its own=exists Laid( family == "primer", layer not in ( "leveller-primer", "sulfate-sealer" ) )
[condition][]The sun lies on the finished floor=Fact( says == "sunlit: yes" )
[condition][]The sun shines on the work=Fact( says == "sun on the work: yes" )
[condition][]The base has joints of its own=Fact( says == "existing joints: yes" )
[condition][]A wall or beam holds the floor from below=Fact( says == "supporting wall below: yes" )
[condition][]A door has been described=exists Fact( name == "door" )
[condition][]No door has been described=not Fact( name == "door" )
[condition][]The room has not been measured=not Fact( name == "longest run" )
[condition][]The adhesive is to set fast=Fact( says == "adhesive set: rapid" )
[condition][]The adhesive is to set at the normal pace=Fact( says == "adhesive set: normal" )

[condition][]The floor springs underfoot=Fact( says == "springy: yes" )
[condition][]Its leaf may not be cut=Fact( about == $thing.about, says == "can be trimmed: no" )

# --- what follows
[consequence][]Take the edges as pressed=insertLogical( draft.assume( "tile edges", "", "pressed" ) );
[consequence][]Take it that moisture harms the tile=insertLogical( draft.assume( "moisture-sensitive", "", "yes" ) );
[consequence][]Take it that colour shows through the tile=insertLogical( draft.assume( "light or translucent", "", "yes" ) );
[consequence][]Take the pieces as uneven in thickness=insertLogical( draft.assume( "gauged", "", "no" ) );
[consequence][]Take the pieces as of one thickness=insertLogical( draft.assume( "gauged", "", "yes" ) );
[consequence][]Take it that the sun lies on the floor=insertLogical( draft.assume( "sunlit", "", "yes" ) );
[consequence][]Take it that the base has joints=insertLogical( draft.assume( "existing joints", "", "yes" ) );
[consequence][]Take it that a wall holds the floor from below=insertLogical( draft.assume( "supporting wall below", "", "yes" ) );
[consequence][]Take it that the sun shines on the work=insertLogical( draft.assume( "sun on the work", "", "yes" ) );
[consequence][]Take it that the heating is on=insertLogical( draft.assume( "heating running", "", "yes" ) );
[consequence][]Call the tile irregular=insertLogical( draft.conclude( "irregular", "", "yes" ) );
[consequence][]Ask for a joint of at least {figure}=insertLogical( draft.concludeAs( "least joint", "", "{figure}" ) );
[consequence][]Order {figure} more tiles than the floor area=insertLogical( draft.concludeAs( "tile waste", "", "{figure}" ) );
[consequence][]Comb under boards with a notch of {figure}=insertLogical( draft.concludeAs( "board notch", "", "{figure}" ) );
[consequence][]Comb under membranes with a notch of {figure}=insertLogical( draft.concludeAs( "membrane notch", "", "{figure}" ) );
[consequence][]Comb with a notch of {figure}=insertLogical( draft.concludeAs( "trowel notch", "", "{figure}" ) );
[consequence][]Grout the joints with at least class {grade}=insertLogical( draft.grade( "tile", "{grade}" ) );
[consequence][]Say of the joints that {wording}=insertLogical( draft.say( "tile", "{wording}" ) );

# Sentences about acts: what a person is asked to do (rules/acts.yaml).
[condition][]Somebody is asked to {act}=Fact( about == "", says == "asked: {act}" )
[consequence][]Forbid to cut its leaf=forbid( "cut a leaf", $thing.about )
[consequence][]Forbid to {act}=forbid( "{act}", "" )
[consequence][]Only after {gate} may anyone {act}=gate( "{act}", "{gate}", "" )
[consequence][]Only with {care} may anyone {act}=guard( "{act}", "{care}", "" )

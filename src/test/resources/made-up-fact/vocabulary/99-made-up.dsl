[condition][]People dance on the floor=Fact( about == "", says == "dance floor: yes" )

[condition][]Rot has been found=Fact( about == "", says == "rot: yes" )

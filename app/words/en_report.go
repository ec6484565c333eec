package words

// enReport holds the words of the printed answer.
var enReport = table{}

package words

// enPage holds the words of the page.
var enPage = table{}

package words

// enPicture holds the words of the picture.
var enPicture = table{}

package words

// enEmbed holds what is said in a page of another site, and to those who put
// the calculator there.
var enEmbed = table{
	"embed.whole":    "Open the whole answer",
	"embed.not-kept": "This page does not keep what you change. Save a file to keep it.",

	// {0} the attribute, {1} what it says.
	"embed.refused.unknown":    "{0} is not known here.",
	"embed.refused.value":      "{0} cannot be “{1}”.",
	"embed.refused.too-long":   "{0} is too long.",
	"embed.refused.unreadable": "{0} cannot be read as a whole.",
	"embed.refused.contrast":   "{0} {1} is refused: text would have less contrast than 4.5 to 1.",
}

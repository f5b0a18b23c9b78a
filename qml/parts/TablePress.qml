import Bastewright.Theme

// A button for an arm's length: 20 mm at least, and letters to match.
Press {
    least: Theme.tableTarget
    size: Theme.tableText
}

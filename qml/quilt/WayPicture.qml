import Bastewright.Theme
import Bastewright.View

// Where a way of basting begins and how its tables lie, in the colors of the theme.
WayItem {
    line: Theme.line
    ground: Theme.ground
    wood: Theme.wood
    woodDark: Theme.woodDark
    now: Theme.now
    nowInk: Theme.nowInk
}

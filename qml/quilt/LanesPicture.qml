import Bastewright.Theme
import Bastewright.View

// Everybody's work over time in the colours of the theme.
LanesItem {
    family: Theme.family
    paper: Theme.paper
    ground: Theme.ground
    ink: Theme.ink
    quiet: Theme.quiet
    edge: Theme.edge
    open: Theme.open
    close: Theme.done
    team: Theme.soft
    accent: Theme.accent
}

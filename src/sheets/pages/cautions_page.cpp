#include "sheets/columns.h"
#include "sheets/pages/pages.h"
#include "sheets/words.h"

#include <QPainter>

#include <algorithm>

namespace bastewright::sheets {
namespace {

struct Caution {
    QString about, words;
};

std::vector<Caution> cautions(const SheetContext& c) {
    bool pins = false, dots = false;
    for (std::size_t q = 0; q < c.plan.quilts.size(); ++q)
        (c.with(q) == Basting::With::dots ? dots : pins) = true;
    std::vector<Caution> out{
        {Text::tr("Table legs."),
         Text::tr("Check every lock before anything is laid, and after every "
                  "move. Nobody climbs or kneels on a table.")},
        {Text::tr("Lifting."),
         Text::tr("Together, on the lead's count, knees bent, quilt close to the "
                  "body. Say so when it is too heavy; wait for another pair of "
                  "hands.")}};
    if (pins)
        out.push_back(
            {Text::tr("Pins."), Text::tr("Never in the mouth. Open pins point away from the "
                                         "next person's hands. Count them out and back.")});
    out.push_back(
        {Text::tr("Magnets."), Text::tr("Sweep floor and table at the end. Keep magnets away "
                                        "from heart pacemakers, pumps and other medical "
                                        "implants, and from electronics.")});
    if (dots || c.session.setting.room.irons > 0)
        out.push_back(
            {Text::tr("Irons."), Text::tr("One person holds an iron and minds it. Cord off the "
                                          "walkway, up on its heel away from the edge, off at "
                                          "every break. Polyester and thick batting can melt: "
                                          "test a scrap at the label's setting.")});
    out.push_back(
        {Text::tr("Rotary cutter."), Text::tr("Cut away from yourself, on a mat. Closed every "
                                              "time it is put down.")});
    out.push_back(
        {Text::tr("Floor."), Text::tr("No bags, cords or rolls underfoot where people walk "
                                      "with a quilt in their arms. Small children and animals "
                                      "in another room.")});
    out.push_back(
        {Text::tr("Breaks."), Text::tr("Straighten up after every pass; drink; change sides.")});
    return out;
}

} // namespace

Flow cautionsPage(const SheetContext& c) {
    Flow flow{title(Text::tr("Take care"), Text::tr("read out before the first pass"), c.width)};
    flow.front().newPage = true;
    for (const auto& [about, words] : cautions(c))
        flow.push_back(paragraph(std::vector<Span>{{about + QStringLiteral(" "), true}, {words}},
                                 c.width, type::kCheck, 12));
    flow.push_back(paragraph(
        Text::tr(
            "This sheet reminds; it does not replace the labels of the products you use, the rules "
            "of the place you are in, or the advice of people licensed to give it. Where they say "
            "otherwise, follow them."),
        c.width, type::kCheck, 22));
    return flow;
}

} // namespace bastewright::sheets

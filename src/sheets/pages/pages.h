#pragma once

#include "plan/plan.h"
#include "sheets/crew_key.h"
#include "sheets/flow.h"
#include "sheets/paper.h"
#include "sheets/parts.h"
#include "sheets/pictures/place_picture.h"
#include "sheets/sheets.h"
#include "ways/way.h"

#include <QString>

#include <map>
#include <string>
#include <vector>

/// One function for each kind of page. A page is a flow of blocks; what it says comes from session
/// and plan alone. To add a sheet: a file here, its declaration, its place in `sectionsFor`.
namespace bastewright::sheets {

struct SheetContext {
    const Session& session;
    const Plan& plan;
    CrewKey crew;
    double width; ///< of the page's frame, points
    double height;
    std::map<std::string, std::vector<Part>> parts; ///< everybody's, made once

    SheetContext(const Session& s, const Plan& p, const PageFrame& frame)
        : session{s}
        , plan{p}
        , crew{s.setting.helpers}
        , width{frame.contentWidth()}
        , height{frame.contentHeight()} {
        for (const Helper& helper : s.setting.helpers)
            parts.emplace(helper.name, partsOf(p, s, helper.name));
    }

    Unit unit() const { return plan.unit; }
    ClockTime start() const { return session.setting.start; }
    /// The job of a quilt; a blank one where the plan has more quilts than the session.
    const Job& job(std::size_t quilt) const;
    /// How the quilt's zones are basted, in the order of the work; those of one pass.
    std::vector<const Way*> ways(std::size_t quilt, std::optional<int> pass = {}) const {
        return waysOf(job(quilt), plan.quilts[quilt].zones, pass);
    }
    /// How any zone of all quilts is basted.
    bool isAny(const Way& way) const;
    /// Some of its zones are basted otherwise than the quilt is.
    bool isMixed(std::size_t quilt) const;
    /// Name of a quilt, never empty.
    QString quiltName(std::size_t quilt) const;
    /// "Harbour Lights", or "3 quilts: …" for a session of several.
    QString sessionName() const;
    bool severalQuilts() const { return plan.quilts.size() > 1; }
    bool severalTables() const;
    /// "Pass 2", and in a session of several quilts "Harbour Lights, pass 2", with the table where
    /// there are several.
    QString passName(std::size_t quilt, int pass) const;
    /// The letter of somebody's place at a quilt; their own mark where they have no place there.
    QString mark(const std::string& person, std::size_t quilt) const;
    /// How many points somebody puts into a pass, and how many of them are pins of the box.
    int pointsOf(const std::string& person, std::size_t quilt, const Pass& pass) const;
    int pinsOf(const std::string& person, std::size_t quilt, const Pass& pass) const;
    /// The photo of a top as it lies on paper; null where there is none.
    QImage photo(std::size_t quilt) const;
    /// Everybody at the table in a pass.
    PlacePicture places(std::size_t quilt, const Pass& pass) const;
};

// The set for an afternoon.
Flow leadPage(const SheetContext& c, std::size_t quilt);
Flow bringPage(const SheetContext& c);
Flow helperPages(const SheetContext& c, const Helper& helper);

// On request.
Flow whyPage(const SheetContext& c);
Flow passPages(const SheetContext& c, std::size_t quilt);
Flow rowsPage(const SheetContext& c, std::size_t quilt);
Flow ribbonsPages(const SheetContext& c, std::size_t quilt);
Flow countsPage(const SheetContext& c, std::size_t quilt);
Flow machinePage(const SheetContext& c, std::size_t quilt);
Flow labelsPage(const SheetContext& c);
Flow cardPages(const SheetContext& c, std::size_t quilt);

/// A run of pages with its own numbering: the lead's, or one helper's.
struct Section {
    QString person; ///< in the running foot: "Lead", "A Ada"
    Flow flow;
};

std::vector<Section> sectionsFor(const SheetContext& c, const SheetOptions& options);

} // namespace bastewright::sheets

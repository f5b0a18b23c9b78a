#include "job/grid_off.h"
#include "job/job_json.h"
#include "view/edit/field_kinds.h"

#include <cmath>

using namespace bastewright;

namespace fields {
namespace {
/// Where a reading is taken: from head to foot, from left to right.
QString widthLabel(std::size_t reading, std::size_t of) {
    if (of == 1)
        return labelOf("top/width");
    if (of > 3)
        return tr("Width, reading %1").arg(reading + 1);
    return reading == 0        ? tr("Width at the head")
           : reading + 1 == of ? tr("Width at the foot")
                               : tr("Width in the middle");
}

QString lengthLabel(std::size_t reading, std::size_t of) {
    if (of == 1)
        return labelOf("top/length");
    if (of > 3)
        return tr("Length, reading %1").arg(reading + 1);
    return reading == 0        ? tr("Length at the left")
           : reading + 1 == of ? tr("Length at the right")
                               : tr("Length in the middle");
}

/// A first grid for a measured top: blocks of 10 in, and a border of 3 in or somewhat more.
BlockGrid gridFor(const Top& top) {
    const Rect size = topRect(top);
    BlockGrid grid;
    grid.block = Length::inches(10);
    const auto fit = [&](Length side) {
        return std::max(1, int(ratio(side - Length::inches(6), grid.block)));
    };
    grid.columns = fit(size.width());
    grid.rows = fit(size.length());
    return grid;
}

/// Where that was chosen, the top is as large as the grid makes it; else nothing that was measured
/// changes.
void sizeByGrid(Top& top) {
    if (!top.sizeFromGrid || !top.grid)
        return;
    top.width = {top.grid->width()};
    top.length = {top.grid->length()};
}

/// A field of the grid that carries the size along where the size is the grid's.
Field resizing(Field field, std::size_t quilt) {
    field.take = [take = field.take, quilt](Session& s, const QString& typed) {
        auto problem = take(s, typed);
        if (problem.isEmpty())
            sizeByGrid(s.jobs[quilt].top);
        return problem;
    };
    return field;
}

/// A reading: what is typed was measured.
Field measured(Field field, std::size_t quilt) {
    field.take = [take = field.take, quilt](Session& s, const QString& typed) {
        auto problem = take(s, typed);
        if (problem.isEmpty())
            s.jobs[quilt].top.sizeFromGrid = false;
        return problem;
    };
    return field;
}

void addGrid(Fields& out, std::size_t q, Unit unit) {
    const QString group = tr("Blocks");
    const auto grid = [q](auto member) {
        return [=](Session& s) { return &((*s.jobs[q].top.grid).*member); };
    };
    out << resizing(fields::count({"columns", group, labelOf("top/grid/columns")},
                                  grid(&BlockGrid::columns)),
                    q)
        << resizing(
               fields::count({"rows", group, labelOf("top/grid/rows")}, grid(&BlockGrid::rows)), q)
        << resizing(fields::length({"block", group, labelOf("top/grid/block")}, unit,
                                   grid(&BlockGrid::block)),
                    q)
        << resizing(fields::length({"sashing", group, labelOf("top/grid/sashing")}, unit,
                                   grid(&BlockGrid::sashing)),
                    q)
        << resizing(fields::length({"border", group, labelOf("top/grid/border")}, unit,
                                   grid(&BlockGrid::border)),
                    q)
        << resizing(fields::length({"borderends", group, labelOf("top/grid/border_ends")}, unit,
                                   grid(&BlockGrid::borderEnds)),
                    q)
        << fields::choice(
               {"sizefrom", group, tr("Size of the top")},
               {tr("As measured"), tr("As the blocks make it")},
               [q](const Session& s) { return int(s.jobs[q].top.sizeFromGrid); },
               [q](Session& s, int i) {
                   s.jobs[q].top.sizeFromGrid = i == 1;
                   sizeByGrid(s.jobs[q].top);
               })
        << fields::action({"borders", group, tr("Set the borders by the measured size")},
                          [q](Session& s) { setBordersByMeasure(s.jobs[q].top); });
}

/// Both or none: one alone says nothing.
void addDiagonals(Fields& out, const Top& top, std::size_t q, Unit unit) {
    const QString group = tr("Corners");
    if (top.diagonals.size() != 2) {
        out << fields::action({"diagonals", group, tr("Measure the diagonals")}, [q](Session& s) {
            auto& of = s.jobs[q].top;
            const Rect size = topRect(of);
            const Length across =
                Length::nearestInches(std::hypot(size.width().in(), size.length().in()));
            of.diagonals = {across, across};
        });
        return;
    }
    const auto diagonal = [q](std::size_t i) {
        return [=](Session& s) { return &s.jobs[q].top.diagonals[i]; };
    };
    out << fields::length({"diagonal0", group, tr("From head left to foot right")}, unit,
                          diagonal(0))
        << fields::length({"diagonal1", group, tr("From head right to foot left")}, unit,
                          diagonal(1))
        << fields::removal({"nodiagonals", group, tr("Remove the diagonals")},
                           [q](Session& s) { s.jobs[q].top.diagonals.clear(); });
}

constexpr std::size_t kSeamsListed = 12; // more are drawn, not typed

/// Seams beside those of the grid, each by its two ends.
void addSeams(Fields& out, const Top& top, std::size_t q, Unit unit) {
    for (std::size_t i = 0; i < top.seams.size() && i < kSeamsListed; ++i) {
        const auto end = [=](auto point, auto axis) {
            return [=](Session& s) { return &(s.jobs[q].top.seams[i].*point.*axis); };
        };
        const QString key = QStringLiteral("seam%1/").arg(i);
        const QString group = fields::tr("Further seam %1").arg(i + 1);
        out << fields::length({key + "x0", group, fields::tr("Begins, from the left")}, unit,
                              end(&Segment::from, &Point::x))
            << fields::length({key + "y0", group, fields::tr("Begins, from the head")}, unit,
                              end(&Segment::from, &Point::y))
            << fields::length({key + "x1", group, fields::tr("Ends, from the left")}, unit,
                              end(&Segment::to, &Point::x))
            << fields::length({key + "y1", group, fields::tr("Ends, from the head")}, unit,
                              end(&Segment::to, &Point::y))
            << fields::removal({key + "remove", group, fields::tr("Remove this seam")},
                               [q, i](Session& s) {
                                   auto& all = s.jobs[q].top.seams;
                                   all.erase(all.begin() + std::ptrdiff_t(i));
                               });
    }
    out << fields::action(
        {"addseam", fields::tr("Seams"), fields::tr("Add a seam")}, [q](Session& s) {
            auto& of = s.jobs[q].top;
            const Rect size = topRect(of);
            const Length middle = Length::inches(std::int64_t(size.length().in() / 2));
            of.seams.push_back({{Length{}, middle}, {size.width(), middle}});
        });
}

} // namespace

Fields ofQuilt(const Session& session, int quilt) {
    const auto q = std::size_t(quilt);
    const Job& job = session.jobs[q];
    const Unit unit = job.unit;
    const QString size = tr("Size as measured");
    Fields out;
    out << text({"name", tr("Name"), tr("Name of the quilt")},
                [q](Session& s) { return &s.jobs[q].name; });
    const auto reading = [q](auto member, std::size_t i) {
        return [=](Session& s) { return &(s.jobs[q].top.*member)[i]; };
    };
    for (std::size_t i = 0; i < job.top.width.size(); ++i)
        out << measured(
            length({QStringLiteral("width%1").arg(i), size, widthLabel(i, job.top.width.size())},
                   unit, reading(&Top::width, i)),
            q);
    for (std::size_t i = 0; i < job.top.length.size(); ++i)
        out << measured(
            length({QStringLiteral("length%1").arg(i), size, lengthLabel(i, job.top.length.size())},
                   unit, reading(&Top::length, i)),
            q);
    if (job.top.width.size() < 3)
        out << action({"more", size, tr("Add a reading each way")}, [q](Session& s) {
            auto& top = s.jobs[q].top;
            top.width.push_back(top.width.back());
            top.length.push_back(top.length.back());
            top.sizeFromGrid = false;
        });
    if (job.top.width.size() > 1)
        out << removal({"fewer", size, tr("Keep one reading each way")}, [q](Session& s) {
            auto& top = s.jobs[q].top;
            top.width.resize(1);
            top.length.resize(1);
        });
    addDiagonals(out, job.top, q, unit);
    if (job.top.grid) {
        addGrid(out, q, unit);
        out << removal({"nogrid", tr("Blocks"), tr("This top has no block grid")}, [q](Session& s) {
            s.jobs[q].top.grid.reset();
            s.jobs[q].top.sizeFromGrid = false;
        });
    } else {
        out << action({"grid", tr("Blocks"), tr("Describe a block grid")}, [q](Session& s) {
            auto& top = s.jobs[q].top;
            top.grid = gridFor(top);
            setBordersByMeasure(top);
        });
    }
    addSeams(out, job.top, q, unit);
    out << choice(
        {"method", tr("Quilting"), labelOf("quilting/method")},
        {words::method(Quilting::Method::inTheDitch), words::method(Quilting::Method::acrossSeams),
         words::method(Quilting::Method::singleTacks), words::method(Quilting::Method::freeMotion),
         words::method(Quilting::Method::undecided)},
        [q](const Session& s) { return int(s.jobs[q].quilting.method); },
        [q](Session& s, int i) { s.jobs[q].quilting.method = Quilting::Method(i); });
    out << optionalLength({"gap", tr("Quilting"), labelOf("quilting/gap_limit")}, unit,
                          [q](Session& s) { return &s.jobs[q].quilting.gapLimit; });
    out << choice(
        {"unit", tr("Measures"), labelOf("unit")},
        {tr("Inches"), tr("Centimeters"), tr("Millimeters")},
        [q](const Session& s) { return int(s.jobs[q].unit); },
        [](Session& s, int i) {
            for (auto& each : s.jobs)
                each.unit = Unit(i);
        });
    return out;
}

} // namespace fields

#include "view/photo/photo_desk.h"

#include "job/job_json.h"
#include "view/paint/cloth.h"
#include "view/photo/photo_file.h"

#include <QMetaObject>

#include <algorithm>

using namespace bastewright;

namespace {

/// Where the corners lie until they are told: a quilt fills most of its photo.
constexpr qreal kIn = 0.08;

std::vector<Colour> coloursOf(const QStringList& texts) {
    std::vector<Colour> out;
    for (const QString& text : texts)
        if (const auto colour = parseColour(text.toStdString()))
            out.push_back(*colour);
    return out;
}

} // namespace

PhotoDesk::PhotoDesk(QObject* parent)
    : QObject{parent}
    , swatches_{{"colour", "name"}} {
    swatches_.setRows({{"#27365c", tr("Navy")},     {"#3f6296", tr("Denim blue")},
                       {"#8fb3d1", tr("Sky blue")}, {"#1f6f78", tr("Teal")},
                       {"#5e8690", tr("Sea gray")}, {"#3f6b4a", tr("Forest green")},
                       {"#8aa67a", tr("Sage")},     {"#c9cf8f", tr("Leaf green")},
                       {"#e0b13c", tr("Gold")},     {"#f2dc9b", tr("Butter yellow")},
                       {"#d9793a", tr("Pumpkin")},  {"#c97f68", tr("Terra cotta")},
                       {"#b5323c", tr("Barn red")}, {"#7a2236", tr("Burgundy")},
                       {"#d98ba0", tr("Rose")},     {"#f3d3d6", tr("Blush")},
                       {"#6c4a7e", tr("Plum")},     {"#b9a3cc", tr("Lavender")},
                       {"#6b4a34", tr("Brown")},    {"#b99b73", tr("Tan")},
                       {"#ece6d8", tr("Cream")},    {"#ffffff", tr("White")},
                       {"#8b8d91", tr("Gray")},     {"#24252b", tr("Black")}});
}

PhotoDesk::~PhotoDesk() {
    if (reading_.joinable())
        reading_.join();
}

void PhotoDesk::setEditor(JobEditor* editor) {
    if (editor == editor_)
        return;
    editor_ = editor;
    connect(editor_, &JobEditor::changed, this, &PhotoDesk::changed);
    emit changed();
}

QStringList PhotoDesk::nameFilters() {
    QStringList endings;
    for (const QString& ending : photo::fileEndings())
        endings << QStringLiteral("*.") + ending << QStringLiteral("*.") + ending.toUpper();
    return {tr("Photos (%1)").arg(endings.join(QLatin1Char(' '))), tr("All files (*)")};
}

void PhotoDesk::open(const QUrl& file) {
    cancel();
    problem_.clear();
    if (!file.isLocalFile())
        return say(
            tr("%1 is not on this device: save the photo here first.").arg(file.toDisplayString()));
    busy_ = true;
    emit changed();
    const int mine = ++asked_;
    // An earlier file is read to its end, which is soon, and what it holds is dropped.
    reading_ = std::jthread{[this, mine, path = file.toLocalFile()] {
        auto read = photo::read(path);
        QMetaObject::invokeMethod(
            this,
            [this, mine, read = std::move(read)] {
                if (mine != asked_)
                    return;
                busy_ = false;
                if (read)
                    show(*read);
                else
                    say(read.error());
            },
            Qt::QueuedConnection);
    }};
}

void PhotoDesk::show(const QImage& picture) {
    picture_ = picture;
    corners_ = {QPointF{kIn, kIn}, {1 - kIn, kIn}, {1 - kIn, 1 - kIn}, {kIn, 1 - kIn}};
    emit pictureChanged();
    emit cornersChanged();
    emit changed();
}

void PhotoDesk::moveCorner(int corner, QPointF to) {
    if (!picking() || corner < 0 || std::size_t(corner) >= corners_.size())
        return;
    corners_[std::size_t(corner)] = {std::clamp(to.x(), 0.0, 1.0), std::clamp(to.y(), 0.0, 1.0)};
    emit cornersChanged();
}

void PhotoDesk::turn() {
    if (!picking())
        return;
    picture_ = picture_.transformed(QTransform{}.rotate(90));
    // What was foot left comes to be head left.
    photo::Corners turned;
    for (std::size_t i = 0; i < corners_.size(); ++i) {
        const QPointF was = corners_[(i + 3) % 4];
        turned[i] = {1 - was.y(), was.x()};
    }
    corners_ = turned;
    emit pictureChanged();
    emit cornersChanged();
}

photo::Corners PhotoDesk::inPixels() const {
    photo::Corners out;
    for (std::size_t i = 0; i < out.size(); ++i)
        out[i] = {corners_[i].x() * picture_.width(), corners_[i].y() * picture_.height()};
    return out;
}

void PhotoDesk::take() {
    if (!picking() || !sound())
        return;
    const Rect top = topRect(editor_->job().top);
    const auto kept = photo::asPhoto(
        photo::straightened(picture_, inPixels(), {top.width().in(), top.length().in()}));
    cancel();
    if (!kept)
        return say(tr("The photo could not be kept: choose another."));
    apply(tr("the photo"), [&](Top& of) { of.photo = *kept; });
}

void PhotoDesk::cancel() {
    ++asked_;
    busy_ = false;
    picture_ = {};
    emit pictureChanged();
    emit changed();
}

void PhotoDesk::removePhoto() {
    apply(tr("without the photo"), [](Top& top) { top.photo = {}; });
}

void PhotoDesk::forgetProblem() {
    say({});
}

void PhotoDesk::say(const QString& problem) {
    problem_ = problem;
    emit changed();
}

void PhotoDesk::apply(const QString& what, const std::function<void(Top&)>& change) {
    Session next = editor_->session();
    change(next.jobs[std::size_t(editor_->quilt())].top);
    say(editor_->apply(what, std::move(next)));
}

QStringList PhotoDesk::fabrics() const {
    QStringList out;
    if (!editor_)
        return out;
    const Top& top = editor_->job().top;
    for (const Colour& colour : top.fabrics)
        out << QString::fromStdString(format(colour));
    if (out.isEmpty()) {
        const auto usual = cloth::fabricsOf(top);
        for (const QColor& colour : {usual.border, usual.second, usual.accent, usual.light})
            out << colour.name();
    }
    return out;
}

bool PhotoDesk::mayAdd() const {
    return std::size_t(fabrics().size()) < limits::kColours;
}

bool PhotoDesk::mayRemove() const {
    return std::size_t(fabrics().size()) > limits::kFewestColours;
}

void PhotoDesk::applyFabrics(const QStringList& colours) {
    apply(tr("the fabrics"), [&](Top& top) { top.fabrics = coloursOf(colours); });
}

void PhotoDesk::setFabric(int index, const QString& colour) {
    auto all = fabrics();
    if (index < 0 || index >= all.size() || !parseColour(colour.toStdString()))
        return;
    all[index] = colour;
    applyFabrics(all);
}

void PhotoDesk::addFabric() {
    auto all = fabrics();
    if (!mayAdd())
        return;
    all.insert(all.size() - 1, cloth::fabricsOf({}).accent.name()); // the lightest stays last
    applyFabrics(all);
}

void PhotoDesk::removeFabric(int index) {
    auto all = fabrics();
    if (!mayRemove() || index < 0 || index >= all.size())
        return;
    all.removeAt(index);
    applyFabrics(all);
}

void PhotoDesk::useUsualFabrics() {
    apply(tr("the usual fabrics"), [](Top& top) { top.fabrics.clear(); });
}

#include "sheets/pdf_outline.h"

#include <QList>

#include <algorithm>
#include <map>

namespace bastewright::sheets {
namespace {

/// What stands between "N 0 obj" and "endobj".
QByteArray objectText(const QByteArray& pdf, int number) {
    const QByteArray key = '\n' + QByteArray::number(number) + " 0 obj\n";
    const auto at = pdf.indexOf(key);
    if (at < 0)
        return {};
    const auto from = at + key.size();
    return pdf.mid(from, pdf.indexOf("endobj", from) - from);
}

/// The object a key refers to: 3 for "/Pages 3 0 R"; 0 for none.
int reference(const QByteArray& text, const QByteArray& key) {
    const auto at = text.indexOf(key + ' ');
    if (at < 0)
        return 0;
    const auto from = at + key.size() + 1;
    return text.mid(from, text.indexOf(' ', from) - from).toInt();
}

QList<int> kids(const QByteArray& pages) {
    QList<int> out;
    const auto from = pages.indexOf("/Kids"), open = pages.indexOf('[', from);
    const QByteArray list = pages.mid(open + 1, pages.indexOf(']', open) - open - 1).simplified();
    const auto words = list.split(' ');
    for (qsizetype i = 0; i + 2 < words.size(); i += 3)
        out << words[i].toInt();
    return out;
}

/// A text string (ISO 32000-1, 7.9.2.2): UTF-16BE with its mark, in hexadecimal.
QByteArray textString(const QString& text) {
    QByteArray hex = "<FEFF";
    for (const QChar c : text)
        hex += QByteArray::number(c.unicode(), 16).rightJustified(4, '0').toUpper();
    return hex + '>';
}

QByteArray ref(int number) {
    return QByteArray::number(number) + " 0 R";
}

/// The outline's objects, the root of them first, numbered from `first` on.
std::map<int, QByteArray> outlineObjects(const std::vector<SheetSet::Mark>& marks,
                                         const QList<int>& pages, int first) {
    struct Node {
        int parent = 0, previous = 0, next = 0, first = 0, last = 0, children = 0;
    };
    // 0 is the root; the marks follow.
    std::vector<Node> nodes(marks.size() + 1);
    int top = 0;
    for (int i = 1; i < int(nodes.size()); ++i) {
        const int parent = marks[std::size_t(i - 1)].level == 0 ? 0 : top;
        if (parent == 0)
            top = i;
        Node& above = nodes[std::size_t(parent)];
        Node& node = nodes[std::size_t(i)];
        node.parent = parent;
        node.previous = above.last;
        if (above.last > 0)
            nodes[std::size_t(above.last)].next = i;
        else
            above.first = i;
        above.last = i;
        ++above.children;
    }
    std::map<int, QByteArray> out;
    for (int i = 0; i < int(nodes.size()); ++i) {
        const Node& node = nodes[std::size_t(i)];
        QByteArray text = i == 0 ? "<< /Type /Outlines" : "<< /Parent " + ref(first + node.parent);
        const auto link = [&](const char* key, int to) {
            if (to > 0)
                text += QByteArray{" "} + key + ' ' + ref(first + to);
        };
        link("/First", node.first);
        link("/Last", node.last);
        link("/Prev", node.previous);
        link("/Next", node.next);
        // Closed, all but the root: a negative count.
        if (node.children > 0)
            text += " /Count " + QByteArray::number(i == 0 ? node.children : -node.children);
        if (i > 0) {
            const auto& mark = marks[std::size_t(i - 1)];
            text +=
                " /Title " + textString(mark.title) + " /Dest [" + ref(pages[mark.page]) + " /Fit]";
        }
        out[first + i] = text + " >>";
    }
    return out;
}

} // namespace

QByteArray withOutline(const QByteArray& pdf, const std::vector<SheetSet::Mark>& marks,
                       const QString& language) {
    const auto trailerAt = pdf.lastIndexOf("trailer");
    const QByteArray trailer = pdf.mid(trailerAt);
    const int root = reference(trailer, "/Root"), info = reference(trailer, "/Info");
    const int size = reference(trailer.simplified(), "/Size");
    const QByteArray catalog = objectText(pdf, root).simplified();
    const QList<int> pages = kids(objectText(pdf, reference(catalog, "/Pages")));
    const bool fits = std::ranges::all_of(
        marks, [&](const auto& m) { return m.page >= 0 && m.page < pages.size(); });
    if (trailerAt < 0 || root == 0 || size == 0 || !catalog.endsWith(">>") || !fits)
        return pdf;

    auto objects = outlineObjects(marks, pages, size);
    objects[root] =
        catalog.chopped(2) + "/Outlines " + ref(size) +
        " /PageMode /UseOutlines /ViewerPreferences << /DisplayDocTitle true >> /Lang (" +
        language.toLatin1() + ") >>";
    QByteArray out = pdf;
    if (!out.endsWith('\n'))
        out += '\n';
    std::map<int, qsizetype> offsets;
    for (const auto& [number, text] : objects) {
        offsets[number] = out.size();
        out += QByteArray::number(number) + " 0 obj\n" + text + "\nendobj\n";
    }
    const auto xref = out.size();
    out += "xref\n";
    const auto entry = [&](int number) {
        out += QByteArray::number(offsets[number]).rightJustified(10, '0') + " 00000 n \n";
    };
    out += QByteArray::number(root) + " 1\n";
    entry(root);
    out += QByteArray::number(size) + ' ' + QByteArray::number(objects.size() - 1) + '\n';
    for (const auto& object : objects)
        if (object.first != root)
            entry(object.first);
    const auto startAt = pdf.lastIndexOf("startxref") + 9;
    const QByteArray previous = pdf.mid(startAt, pdf.lastIndexOf("%%EOF") - startAt).trimmed();
    out += "trailer\n<< /Size " + QByteArray::number(size + int(objects.size()) - 1) + " /Root " +
           ref(root);
    if (info > 0)
        out += " /Info " + ref(info);
    out += " /Prev " + previous + " >>\nstartxref\n" + QByteArray::number(xref) + "\n%%EOF\n";
    return out;
}

} // namespace bastewright::sheets

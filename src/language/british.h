#pragma once

#include <QTranslator>

namespace bastewright::language {

/// British English: the American sentences of the sources with other spellings ("colour") and other
/// words of the trade ("wadding" for "batting"). Sentences without such a word stay as they are.
class British : public QTranslator {
public:
    using QTranslator::QTranslator;

    bool isEmpty() const override { return false; }
    QString translate(const char* context, const char* source, const char* disambiguation,
                      int n) const override;
};

/// The text in British words; null where it holds none that differs.
QString inBritish(const QString& american);

} // namespace bastewright::language

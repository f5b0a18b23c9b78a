#pragma once

#include <QString>
#include <QStringList>

/// Which languages there are, and which one is spoken.
namespace bastewright::language {

/// Codes of all languages the program speaks, English first.
QStringList all();

/// What a language calls itself: "Deutsch".
QString ownName(const QString& code);

/// The first language of the system's list that the program speaks; English where none is.
QString ofSystem();

/// The side its lines begin on.
Qt::LayoutDirection directionOf(const QString& code);

/// Speaks this language from now on: translations, the decimal mark, dates, the side lines begin
/// on. An unknown code is English. Needs an application object and its thread; whoever shows words
/// has to show them again.
void speak(const QString& code);

/// The code of the language spoken now.
QString spoken();

} // namespace bastewright::language

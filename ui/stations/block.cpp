#include "block.h"

namespace fayline {
namespace {

/// Reads one cell from `at` on and leaves `at` on what ends it.
QString readCell(const QString& text, qsizetype& at) {
    const auto ends = [&](QChar c) {
        return c == QLatin1Char('\t') || c == QLatin1Char('\n') || c == QLatin1Char('\r');
    };
    QString cell;
    if (at < text.size() && text[at] == QLatin1Char('"') &&
        text.indexOf(QLatin1Char('"'), at + 1) > at) {
        qsizetype i = at + 1;
        while (i < text.size()) {
            if (text[i] != QLatin1Char('"')) {
                cell += text[i++];
            } else if (i + 1 < text.size() && text[i + 1] == QLatin1Char('"')) {
                cell += QLatin1Char('"');
                i += 2;
            } else {
                break;
            }
        }
        const bool closed = i < text.size() && (i + 1 == text.size() || ends(text[i + 1]));
        if (closed) {
            at = i + 1;
            return cell;
        }
        cell.clear();  // the quote belongs to the text
    }
    while (at < text.size() && !ends(text[at])) cell += text[at++];
    return cell;
}

}  // namespace

Block readBlock(const QString& text) {
    Block block;
    qsizetype at = 0;
    while (at < text.size()) {
        QStringList row{readCell(text, at)};
        while (at < text.size() && text[at] == QLatin1Char('\t')) {
            ++at;
            row.append(readCell(text, at));
        }
        if (at < text.size() && text[at] == QLatin1Char('\r')) ++at;
        if (at < text.size() && text[at] == QLatin1Char('\n')) ++at;
        block.push_back(row);
    }
    return block;
}

QString writeBlock(const Block& block) {
    QString text;
    for (const QStringList& row : block) {
        for (qsizetype i = 0; i < row.size(); ++i) {
            QString cell = row[i];
            const bool quoted =
                cell.contains(QLatin1Char('\t')) || cell.contains(QLatin1Char('\n')) ||
                cell.contains(QLatin1Char('\r')) || cell.startsWith(QLatin1Char('"'));
            if (quoted)
                cell = QLatin1Char('"') + cell.replace(QLatin1Char('"'), QStringLiteral("\"\"")) +
                       QLatin1Char('"');
            if (i > 0) text += QLatin1Char('\t');
            text += cell;
        }
        text += QLatin1Char('\n');
    }
    return text;
}

}  // namespace fayline

#include "view/base/table_rows.h"

TableRows::TableRows(QList<QByteArray> roles, QObject* parent)
    : QAbstractListModel{parent}
    , roles_{std::move(roles)} {}

void TableRows::setRows(QList<QVariantList> rows) {
    const auto before = rows_.size(), now = rows.size();
    const auto shared = std::min(before, now);
    if (now < before) {
        beginRemoveRows({}, int(now), int(before) - 1);
        rows_.resize(now);
        endRemoveRows();
    }
    for (qsizetype i = 0; i < shared; ++i) {
        Q_ASSERT(rows[i].size() == roles_.size());
        if (rows_[i] == rows[i])
            continue;
        rows_[i] = rows[i];
        emit dataChanged(index(int(i)), index(int(i)));
    }
    if (now > before) {
        beginInsertRows({}, int(before), int(now) - 1);
        rows_ = std::move(rows);
        endInsertRows();
    }
    if (now != before)
        emit countChanged();
}

int TableRows::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : count();
}

QVariant TableRows::data(const QModelIndex& index, int role) const {
    const int column = role - Qt::UserRole;
    if (!checkIndex(index, CheckIndexOption::IndexIsValid) || column < 0 || column >= roles_.size())
        return {};
    return rows_[index.row()][column];
}

QHash<int, QByteArray> TableRows::roleNames() const {
    QHash<int, QByteArray> names;
    for (int i = 0; i < roles_.size(); ++i)
        names.insert(Qt::UserRole + i, roles_[i]);
    return names;
}

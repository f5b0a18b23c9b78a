#pragma once

#include <QAbstractListModel>
#include <QList>
#include <QVariantList>
#include <QtQmlIntegration>

/// A list for the screen whose rows are computed as a whole: named columns of text, numbers and
/// flags. Setting rows again tells views only about rows that differ, so that a re-plan does not
/// make lists jump.
class TableRows : public QAbstractListModel {
    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(int count READ count NOTIFY countChanged)

public:
    explicit TableRows(QList<QByteArray> roles, QObject* parent = nullptr);

    /// Every row has one value for each role, in the order of the roles.
    void setRows(QList<QVariantList> rows);
    const QList<QVariantList>& rows() const { return rows_; }

    int count() const { return static_cast<int>(rows_.size()); }
    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QHash<int, QByteArray> roleNames() const override;

signals:
    void countChanged();

private:
    QList<QByteArray> roles_;
    QList<QVariantList> rows_;
};

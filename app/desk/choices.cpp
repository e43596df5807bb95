// SPDX-License-Identifier: MIT
#include "app/desk/choices.h"

#include "app/desk/stone_painter.h"

#include <QCoreApplication>

#include <algorithm>

namespace sp::desk {

Choice choiceOf(const catalogue::Material& material) {
    Choice choice{QVariant::fromValue(material.id), QString::fromStdString(material.name), {}, {}};
    if (material.kind == catalogue::MaterialKind::Stone) choice.stones.push_back(stoneColour(material.stone.rgb));
    return choice;
}

Choice choiceOf(const catalogue::Customer& customer) {
    const auto telephone = QString::fromStdString(customer.telephone);
    QString digits;
    for (const QChar c : telephone)
        if (c.isDigit()) digits.append(c);
    return {QVariant::fromValue(customer.id),
            QString::fromStdString(customer.name),
            !catalogue::certificatesOf(customer).empty()
                ? QCoreApplication::translate("customers", "certificate on file")
                : QString(),
            {},
            {telephone, digits, QString::fromStdString(customer.mail)}};
}

std::vector<Choice> choicesOf(const std::vector<catalogue::Material>& materials,
                              std::initializer_list<catalogue::MaterialKind> kinds) {
    std::vector<Choice> choices;
    for (const auto& material : materials)
        if (std::find(kinds.begin(), kinds.end(), material.kind) != kinds.end()) choices.push_back(choiceOf(material));
    return choices;
}

} // namespace sp::desk

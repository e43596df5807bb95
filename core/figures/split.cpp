// SPDX-License-Identifier: MIT
#include "core/figures/split.h"

#include <algorithm>
#include <chrono>
#include <map>
#include <tuple>
#include <utility>

namespace sp::figures {

namespace {

/// A group as one line begins it, without its sums.
Group begunBy(const EarnedLine& line, By by, const std::vector<QuantitySpan>& spans) {
    Group group;
    switch (by) {
    case By::Month: group.begins = monthOf(line.day); break;
    case By::Week: group.begins = weekOf(line.day); break;
    case By::Design: std::tie(group.key, group.name) = std::tie(line.design, line.designName); break;
    case By::Customer: std::tie(group.key, group.name) = std::tie(line.customer, line.customerName); break;
    case By::Blank: std::tie(group.key, group.name) = std::tie(line.blank, line.blankName); break;
    case By::Quantity:
        for (const auto& span : spans)
            if (span.from <= line.quantity) group.quantities = span;
        break;
    }
    return group;
}

/// What tells a group from the others.
auto markOf(const Group& group) {
    return std::tuple(group.begins, group.quantities.from, group.key, group.key.isNone() ? group.name : std::string());
}

void add(Group& group, const EarnedLine& line, std::size_t place) {
    group.earned += line.earned;
    group.lines.push_back(place);
    if (group.jobs.empty() || group.jobs.back() != line.number) group.jobs.push_back(line.number);
}

void sortByEarning(std::vector<Group>& groups) {
    std::ranges::stable_sort(groups, [](const Group& a, const Group& b) {
        const auto hourA = a.earned.perBenchHour();
        const auto hourB = b.earned.perBenchHour();
        if (hourA != hourB) return hourB < hourA; // without a figure comes last
        return a.name < b.name;
    });
}

} // namespace

units::Date monthOf(units::Date day) {
    const std::chrono::year_month_day parts(day.days());
    return units::Date::fromDays(parts.year() / parts.month() / 1);
}

units::Date weekOf(units::Date day) {
    const std::chrono::weekday weekday(day.days());
    return day.plusDays(1 - static_cast<std::int64_t>(weekday.iso_encoding()));
}

std::vector<QuantitySpan> spansFrom(std::span<const units::Count> begins) {
    std::vector<units::Count> from(begins.begin(), begins.end());
    from.push_back(units::Count::of(0));
    from.push_back(units::Count::of(1));
    std::ranges::sort(from);
    from.erase(std::unique(from.begin(), from.end()), from.end());
    std::vector<QuantitySpan> spans;
    for (std::size_t i = 0; i < from.size(); ++i) {
        const bool isLast = i + 1 == from.size();
        spans.push_back({from[i], isLast ? std::nullopt : std::optional(from[i + 1] - units::Count::of(1))});
    }
    return spans;
}

std::vector<Group> split(std::span<const EarnedLine> lines, By by, std::span<const units::Count> begins) {
    const auto spans = spansFrom(begins);
    std::vector<Group> groups;
    std::map<decltype(markOf(Group{})), std::size_t> places;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const auto& line = lines[i];
        auto begun = begunBy(line, by, spans);
        const auto [place, isNew] = places.emplace(markOf(begun), groups.size());
        if (isNew) groups.push_back(begun);
        auto& group = groups[place->second];
        group.name = std::move(begun.name);
        add(group, line, i);
    }
    switch (by) {
    case By::Month:
    case By::Week: std::ranges::sort(groups, {}, &Group::begins); break;
    case By::Quantity: std::ranges::sort(groups, {}, [](const Group& group) { return group.quantities.from; }); break;
    case By::Design:
    case By::Customer:
    case By::Blank: sortByEarning(groups); break;
    }
    return groups;
}

bool isSame(const Group& a, const Group& b) { return markOf(a) == markOf(b); }

Group together(std::span<const EarnedLine> lines) {
    Group all;
    for (std::size_t i = 0; i < lines.size(); ++i) add(all, lines[i], i);
    return all;
}

std::vector<JobPart> jobsIn(const Group& group, std::span<const EarnedLine> lines) {
    std::vector<JobPart> jobs;
    for (const auto place : group.lines) {
        const auto& line = lines[place];
        if (jobs.empty() || jobs.back().number != line.number)
            jobs.push_back({line.job, line.number, line.customerName, line.day, {}});
        jobs.back().earned += line.earned;
    }
    return jobs;
}

} // namespace sp::figures

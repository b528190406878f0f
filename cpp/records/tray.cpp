// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "records/tray.h"

#include <algorithm>
#include <cctype>

namespace halfcup::records {

namespace {

std::string plain(std::string_view label) {
    const auto isBlank = [](unsigned char c) { return std::isspace(c) != 0; };
    while (!label.empty() && isBlank(static_cast<unsigned char>(label.front())))
        label.remove_prefix(1);
    while (!label.empty() && isBlank(static_cast<unsigned char>(label.back())))
        label.remove_suffix(1);
    std::string text(label);
    std::ranges::transform(text, text.begin(),
                           [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return text;
}

bool isOtherJar(const Sample& sample, const RecordId& sampleId) {
    return isInTray(sample) && !sample.jar.empty() && sample.id != sampleId;
}

} // namespace

bool isSameLabel(std::string_view one, std::string_view other) {
    return plain(one) == plain(other);
}

const Sample* jarWith(std::string_view label, std::span<const Sample> drafts, const RecordId& sampleId) {
    for (const Sample& sample : drafts)
        if (isOtherJar(sample, sampleId) && isSameLabel(sample.jar, label))
            return &sample;
    return nullptr;
}

int waitingJars(std::span<const Sample> drafts, const RecordId& sampleId) {
    return static_cast<int>(
        std::ranges::count_if(drafts, [&](const Sample& sample) { return isOtherJar(sample, sampleId); }));
}

std::string freeLabel(std::string_view colonyLabel, std::span<const Sample> drafts,
                      const RecordId& sampleId) {
    if (!plain(colonyLabel).empty() && !jarWith(colonyLabel, drafts, sampleId))
        return std::string(colonyLabel);
    for (int number = 1;; ++number) {
        std::string label = std::to_string(number);
        if (!jarWith(label, drafts, sampleId))
            return label;
    }
}

} // namespace halfcup::records

// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "device/ios/ios_file_handover.h"

#include "device/ios/top_page.h"

#include <UniformTypeIdentifiers/UniformTypeIdentifiers.h>

// Hears what the keeper picks. The picker does not keep it alive, so the handover does.
@interface HalfcupPickerEar : NSObject <UIDocumentPickerDelegate>
@property(nonatomic, copy) void (^onAnswer)(NSURL* url);
@end

@implementation HalfcupPickerEar
- (void)documentPicker:(UIDocumentPickerViewController*)picker didPickDocumentsAtURLs:(NSArray<NSURL*>*)urls {
    Q_UNUSED(picker)
    self.onAnswer(urls.firstObject);
}
- (void)documentPickerWasCancelled:(UIDocumentPickerViewController*)picker {
    Q_UNUSED(picker)
    self.onAnswer(nil);
}
@end

namespace halfcup::device {

struct IosFileHandover::Picker {
    HalfcupPickerEar* ear = nil;
};

IosFileHandover::IosFileHandover(QObject* parent)
    : FileHandover(parent)
    , m_picker(std::make_unique<Picker>()) {}

IosFileHandover::~IosFileHandover() {
    // A picker that is still open answers into nothing.
    m_picker->ear.onAnswer = ^(NSURL*) {
    };
}

// iOS knows the kind of a file by its ending.
void IosFileHandover::share(const QString& path, const QString&) {
    UIViewController* page = topPage();
    if (page == nil)
        return; // the file lies in its folder all the same
    NSURL* file = [NSURL fileURLWithPath:[NSString stringWithUTF8String:path.toUtf8().constData()]];
    UIActivityViewController* sheet = [[UIActivityViewController alloc] initWithActivityItems:@[ file ]
                                                                       applicationActivities:nil];
    // On a tablet the sheet is a bubble and wants to know what it points at: the lower edge, where the action is.
    const CGRect bounds = page.view.bounds;
    sheet.popoverPresentationController.sourceView = page.view;
    sheet.popoverPresentationController.sourceRect =
        CGRectMake(CGRectGetMidX(bounds), CGRectGetMaxY(bounds) - 1, 1, 1);
    [page presentViewController:sheet animated:YES completion:nil];
}

// The picker has no title of ours, and is not narrowed down: our endings mean nothing to it.
void IosFileHandover::chooseFile(const QString&, const QStringList&) {
    UIViewController* page = topPage();
    if (page == nil) {
        Q_EMIT cancelled();
        return;
    }
    m_picker->ear = [[HalfcupPickerEar alloc] init];
    m_picker->ear.onAnswer = ^(NSURL* url) {
        if (url != nil)
            Q_EMIT chosen(QString::fromUtf8(url.path.UTF8String));
        else
            Q_EMIT cancelled();
    };
    UIDocumentPickerViewController* picker =
        [[UIDocumentPickerViewController alloc] initForOpeningContentTypes:@[ UTTypeItem ] asCopy:YES];
    picker.delegate = m_picker->ear;
    [page presentViewController:picker animated:YES completion:nil];
}

} // namespace halfcup::device

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/keyring.h"

#include <qt6keychain/keychain.h>

#include <utility>

namespace leadline {
namespace {

const QString service = QStringLiteral("leadline");

/// The keyring's reason as a value; it never holds the secret.
Error error_of(const QKeychain::Job& job, const QString& entry) {
    if (job.error() == QKeychain::EntryNotFound) {
        return Error{ErrorCode::not_found, "keyring", entry.toStdString(), {}};
    }
    return Error{ErrorCode::keyring_failed, {}, job.errorString().toStdString(), {}};
}

void start(QKeychain::Job& job, const QString& entry) {
    job.setInsecureFallback(false);
    job.setKey(entry);
    job.start();
}

/// Starts a job of which only the outcome matters.
void start(QKeychain::Job& job, const QString& entry, QObject* context,
           Keyring::Finished finished) {
    QObject::connect(&job, &QKeychain::Job::finished, context,
                     [entry, finished = std::move(finished)](QKeychain::Job* done) {
                         if (done->error() == QKeychain::NoError) {
                             finished(Done{});
                         } else {
                             finished(error_of(*done, entry));
                         }
                     });
    start(job, entry);
}

}  // namespace

void DesktopKeyring::read(const QString& entry, QObject* context, Found found) {
    // Jobs delete themselves when they are finished.
    auto* job = new QKeychain::ReadPasswordJob(service);
    QObject::connect(job, &QKeychain::Job::finished, context,
                     [entry, job, found = std::move(found)](QKeychain::Job* done) {
                         if (done->error() != QKeychain::NoError) {
                             found(error_of(*done, entry));
                             return;
                         }
                         QByteArray bytes = job->binaryData();
                         SecretBytes secret = SecretBytes::copy_of(
                             {bytes.constData(), static_cast<std::size_t>(bytes.size())});
                         wipe(bytes);
                         found(std::move(secret));
                     });
    start(*job, entry);
}

void DesktopKeyring::write(const QString& entry, const SecretBytes& secret, QObject* context,
                           Finished finished) {
    auto* job = new QKeychain::WritePasswordJob(service);
    const std::string_view bytes = secret.view();
    job->setBinaryData(QByteArray(bytes.data(), static_cast<qsizetype>(bytes.size())));
    start(*job, entry, context, std::move(finished));
}

void DesktopKeyring::remove(const QString& entry, QObject* context, Finished finished) {
    auto* job = new QKeychain::DeletePasswordJob(service);
    start(*job, entry, context, std::move(finished));
}

}  // namespace leadline

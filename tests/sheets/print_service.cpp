#include "print_service.h"

#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QStandardPaths>
#include <QThread>

#include <arpa/inet.h>
#include <cups/cups.h>
#include <sys/socket.h>
#include <unistd.h>

namespace bastewright {
namespace {

const QStringList kPlaces{"/usr/sbin", "/usr/bin", "/sbin", "/bin"};

QString program(const QString& name) {
    return QStandardPaths::findExecutable(name, kPlaces);
}

/// A loopback port that was free a moment ago.
int freePort() {
    const int one = socket(AF_INET, SOCK_STREAM, 0);
    sockaddr_in address{};
    address.sin_family = AF_INET;
    address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
    socklen_t size = sizeof address;
    auto* plain = reinterpret_cast<sockaddr*>(&address);
    const bool good = bind(one, plain, sizeof address) == 0 && getsockname(one, plain, &size) == 0;
    close(one);
    return good ? ntohs(address.sin_port) : 0;
}

void write(const QString& path, const QString& text) {
    QFile file{path};
    if (file.open(QIODevice::WriteOnly))
        file.write(text.toUtf8());
}

// Takes A4 and Letter, both sides, grey; gives PDFs on as they come.
const char* const kPpd = R"ppd(*PPD-Adobe: "4.3"
*FormatVersion: "4.3"
*FileVersion: "1.0"
*LanguageVersion: English
*LanguageEncoding: ISOLatin1
*PCFileName: "TEST.PPD"
*Manufacturer: "Test"
*Product: "(Test)"
*ModelName: "Test printer"
*ShortNickName: "Test printer"
*NickName: "Test printer"
*PSVersion: "(3010.000) 0"
*LanguageLevel: "3"
*ColorDevice: True
*DefaultColorSpace: RGB
*cupsVersion: 2.4
*cupsFilter2: "application/pdf application/pdf 0 @PASS_ON@"
*OpenUI *PageSize/Media Size: PickOne
*DefaultPageSize: A4
*PageSize A4/A4: "<</PageSize[595 842]>>setpagedevice"
*PageSize Letter/Letter: "<</PageSize[612 792]>>setpagedevice"
*CloseUI: *PageSize
*OpenUI *PageRegion/Media Size: PickOne
*DefaultPageRegion: A4
*PageRegion A4/A4: "<</PageSize[595 842]>>setpagedevice"
*PageRegion Letter/Letter: "<</PageSize[612 792]>>setpagedevice"
*CloseUI: *PageRegion
*DefaultImageableArea: A4
*ImageableArea A4/A4: "12 12 583 830"
*ImageableArea Letter/Letter: "12 12 600 780"
*DefaultPaperDimension: A4
*PaperDimension A4/A4: "595 842"
*PaperDimension Letter/Letter: "612 792"
*OpenUI *Duplex/Both Sides: PickOne
*DefaultDuplex: None
*Duplex None/Off: ""
*Duplex DuplexNoTumble/Long Edge: ""
*Duplex DuplexTumble/Short Edge: ""
*CloseUI: *Duplex
*OpenUI *ColorModel/Color Mode: PickOne
*DefaultColorModel: RGB
*ColorModel RGB/Color: ""
*ColorModel Gray/Grayscale: ""
*CloseUI: *ColorModel
)ppd";

} // namespace

QString PrintService::missingTool() {
    for (const char* tool : {"cupsd", "lpadmin", "lpstat", "cupsreject", "cupsdisable"})
        if (program(QString::fromLatin1(tool)).isEmpty())
            return QString::fromLatin1(tool);
    return {};
}

PrintService::PrintService() {
    const QString at = folder_.path();
    for (const char* name : {"root", "state", "cache", "spool", "tmp", "log", "out"})
        QDir{at}.mkpath(QString::fromLatin1(name));
    server_ = QStringLiteral("localhost:%1").arg(freePort());
    write(at + "/cupsd.conf", QStringLiteral(R"(Listen %1
LogLevel info
Browsing No
WebInterface No
DefaultAuthType None
<Location />
  Order allow,deny
  Allow all
</Location>
<Policy default>
  <Limit All>
    Order allow,deny
    Allow all
  </Limit>
</Policy>
)")
                                  .arg(server_));
    write(at + "/cups-files.conf", QStringLiteral(R"(ServerRoot %1/root
StateDir %1/state
CacheDir %1/cache
RequestRoot %1/spool
TempDir %1/tmp
AccessLog %1/log/access
ErrorLog %1/log/error
PageLog %1/log/page
FileDevice Yes
)")
                                       .arg(at));
    // Without any filter the service would leave a file device empty. Its filters run as another
    // person, who must be able to reach them.
    const QString passOn = at + "/pass-on";
    write(passOn, "#!/bin/sh\nif [ -n \"$6\" ]; then exec cat \"$6\"; else exec cat; fi\n");
    constexpr auto kForAll = QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner |
                             QFile::ReadGroup | QFile::ExeGroup | QFile::ReadOther |
                             QFile::ExeOther;
    QFile::setPermissions(passOn, kForAll);
    QFile::setPermissions(at, kForAll);
    write(at + "/test.ppd", QString::fromLatin1(kPpd).replace("@PASS_ON@", passOn));
    qputenv("CUPS_SERVER", server_.toLatin1());
    process_.setProcessChannelMode(QProcess::MergedChannels);
    process_.start(program("cupsd"),
                   {"-f", "-c", at + "/cupsd.conf", "-s", at + "/cups-files.conf"});
    QElapsedTimer timer;
    timer.start();
    while (!runs_ && timer.elapsed() < 20'000 && process_.state() != QProcess::NotRunning) {
        QThread::msleep(100);
        runs_ = command("lpstat", {"-r"});
        process_.waitForReadyRead(1);
    }
}

PrintService::~PrintService() {
    stop();
}

void PrintService::stop() {
    if (process_.state() == QProcess::NotRunning)
        return;
    process_.terminate();
    if (!process_.waitForFinished(5'000))
        process_.kill();
    process_.waitForFinished(5'000);
    runs_ = false;
}

bool PrintService::command(const QString& tool, const QStringList& arguments) {
    QProcess one;
    one.setProcessChannelMode(QProcess::MergedChannels);
    one.start(program(tool), arguments);
    one.waitForFinished(20'000);
    const QByteArray said = one.readAll();
    return one.exitCode() == 0 && !said.contains("not running");
}

QString PrintService::addQueue(const QString& name, const QString& device) {
    const QString file = folder_.filePath(QStringLiteral("out/%1.pdf").arg(name));
    const QString uri = device.isEmpty() ? QStringLiteral("file://") + file : device;
    const bool made =
        command("lpadmin", {"-p", name, "-E", "-v", uri, "-P", folder_.filePath("test.ppd"), "-o",
                            "printer-error-policy=abort-job"});
    return made ? file : QString{};
}

std::map<QString, QString> PrintService::jobAttributes(int job) const {
    ipp_t* request = ippNewRequest(IPP_OP_GET_JOB_ATTRIBUTES);
    const QByteArray uri = QStringLiteral("ipp://localhost/jobs/%1").arg(job).toUtf8();
    ippAddString(request, IPP_TAG_OPERATION, IPP_TAG_URI, "job-uri", nullptr, uri.constData());
    ippAddString(request, IPP_TAG_OPERATION, IPP_TAG_KEYWORD, "requested-attributes", nullptr,
                 "all");
    ipp_t* answer = cupsDoRequest(CUPS_HTTP_DEFAULT, request, "/"); // the request goes with it
    std::map<QString, QString> out;
    for (auto* one = ippFirstAttribute(answer); one; one = ippNextAttribute(answer)) {
        char value[512] = "";
        ippAttributeString(one, value, sizeof value);
        if (const char* name = ippGetName(one))
            out[QString::fromUtf8(name)] = QString::fromUtf8(value);
    }
    ippDelete(answer);
    return out;
}

QString PrintService::log() const {
    QFile file{folder_.filePath("log/error")};
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString{};
}

} // namespace bastewright
